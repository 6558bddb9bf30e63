import { createHash } from 'node:crypto';
import type { Readable } from 'node:stream';
import yauzl from 'yauzl';
import { PACKET_FILES } from '../../../shared/hand-over/packet.js';
import type { PacketTexts } from '../../../shared/hand-over/read-packet.js';
import { type FoundFile, type PacketCheck, verifyPacket } from '../../../shared/hand-over/verify-packet.js';
import type { LogHead } from '../../../shared/proof/merkle-log.js';

/** The parts that are read as well as hashed. */
const READ = new Map(
  (['manifest', 'proof', 'record', 'withheld'] as const).map((part) => [PACKET_FILES[part] as string, part]),
);
/** No record is so long; a longer one would only fill the memory of whoever checks it. */
const LONGEST_TEXT_BYTES = 256 * 1024 * 1024;

/**
 * Checks the archive at a path, reading each file of it once and none of the evidence into memory.
 * @param heads that whoever checks it had before
 * @throws Error when it is no archive, or one that leads out of its folder
 */
export async function checkPacket(path: string, heads: readonly LogHead[] = []): Promise<PacketCheck> {
  const found: FoundFile[] = [];
  const texts: Partial<Record<keyof PacketTexts, string>> = {};
  const zip = await yauzl.openPromise(path);
  try {
    for await (const entry of zip.eachEntry()) {
      // A folder that somebody's program wrote when it packed the same files again is no file.
      if (entry.fileName.endsWith('/') && entry.uncompressedSize === 0) continue;
      const part = READ.get(entry.fileName);
      const { text, ...file } = await readEntry(
        entry.fileName,
        await zip.openReadStreamPromise(entry),
        part !== undefined,
      );
      if (part !== undefined) texts[part] = text;
      found.push(file);
    }
  } finally {
    zip.close();
  }
  const { manifest, proof, record, withheld } = texts;
  return verifyPacket(found, { manifest, proof, record, withheld }, heads);
}

async function readEntry(
  path: string,
  bytes: Readable,
  keep: boolean,
): Promise<FoundFile & { text: string }> {
  const hash = createHash('sha256');
  const pieces: Buffer[] = [];
  let size = 0;
  for await (const piece of bytes as AsyncIterable<Buffer>) {
    hash.update(piece);
    size += piece.length;
    if (keep && size <= LONGEST_TEXT_BYTES) pieces.push(piece);
  }
  return { path, size, sha256: hash.digest('hex'), text: Buffer.concat(pieces).toString('utf8') };
}
