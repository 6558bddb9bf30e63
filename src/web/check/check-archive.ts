import { BlobReader, ZipReader } from '@zip.js/zip.js/lib/zip-core-native.js';
import { PACKET_FILES } from '../../../shared/hand-over/packet.js';
import type { PacketTexts } from '../../../shared/hand-over/read-packet.js';
import { type FoundFile, type PacketCheck, verifyPacket } from '../../../shared/hand-over/verify-packet.js';
import type { LogHead } from '../../../shared/proof/merkle-log.js';
import { startSha256 } from '../../../shared/proof/start-sha256.js';

/** The parts that are read as well as hashed. */
const READ = new Map(
  (['manifest', 'proof', 'record', 'withheld'] as const).map((part) => [PACKET_FILES[part] as string, part]),
);
/** No record is so long; a longer one would only fill the memory of whoever checks it. */
const LONGEST_TEXT_BYTES = 64 * 1024 * 1024;

/** That a file is no archive, or one that broke off. */
export class NoArchiveError extends Error {}

/**
 * Checks a packet on this device: each file is hashed in pieces and never held whole, and nothing is sent anywhere.
 * @param tell how many bytes of how many were looked at
 * @throws NoArchiveError
 */
export async function checkArchive(
  file: Blob,
  heads: readonly LogHead[],
  tell: (done: number, total: number) => void,
): Promise<PacketCheck> {
  const archive = new ZipReader(new BlobReader(file), { useWebWorkers: false });
  const entries = await archive.getEntries().catch(asNoArchive);
  const total = entries.reduce((sum, { uncompressedSize }) => sum + uncompressedSize, 0);
  const found: FoundFile[] = [];
  const texts: Partial<Record<keyof PacketTexts, string>> = {};
  let done = 0;
  for (const entry of entries) {
    // A folder that somebody's program wrote when it packed the same files again is no file.
    if (entry.directory) continue;
    const part = READ.get(entry.filename);
    const hash = startSha256();
    const kept: Uint8Array[] = [];
    let size = 0;
    const into = new WritableStream<Uint8Array>({
      write(piece) {
        hash.add(piece);
        size += piece.length;
        done += piece.length;
        if (part !== undefined && size <= LONGEST_TEXT_BYTES) kept.push(piece.slice());
        tell(done, total);
      },
    });
    await entry.getData(into, { useWebWorkers: false }).catch(asNoArchive);
    if (part !== undefined) texts[part] = await new Blob(kept as BlobPart[]).text();
    found.push({ path: entry.filename, size, sha256: hash.hex() });
  }
  const { manifest, proof, record, withheld } = texts;
  return verifyPacket(found, { manifest, proof, record, withheld }, heads);
}

function asNoArchive(error: unknown): never {
  throw new NoArchiveError(error instanceof Error ? error.message : String(error));
}
