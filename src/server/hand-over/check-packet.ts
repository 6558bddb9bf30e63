import { createHash, webcrypto } from 'node:crypto';
import { type FileHandle, open } from 'node:fs/promises';
import { Reader } from '@zip.js/zip.js/lib/zip-core-native.js';
import { checkArchive } from '../../../shared/hand-over/check-archive.js';
import { checkTimeStamps } from '../../../shared/hand-over/check-time-stamps.js';
import type { PacketCheck } from '../../../shared/hand-over/verify-packet.js';
import type { LogHead } from '../../../shared/proof/merkle-log.js';
import type { RunningSha256 } from '../../../shared/proof/start-sha256.js';

/**
 * Checks the archive at a path, reading each file of it once and none of the evidence into memory.
 * @param heads that whoever checks it had before
 * @param tell how many bytes of how many were looked at
 * @param roots certificates that whoever checks trusts for time stamps, in DER
 * @throws NoArchiveError; Error when there is no such file
 */
export async function checkPacket(
  path: string,
  heads: readonly LogHead[] = [],
  tell?: (done: number, total: number) => void,
  roots: readonly Uint8Array[] = [],
): Promise<PacketCheck> {
  const handle = await open(path, 'r');
  try {
    const check = await checkArchive(new OpenFile(handle), heads, {
      start: startPlatformSha256,
      ...(tell && { tell }),
    });
    return await checkTimeStamps(check, { crypto: webcrypto as Crypto, roots });
  } finally {
    await handle.close();
  }
}

/** A file, of which the library reads parts. */
class OpenFile extends Reader<FileHandle> {
  constructor(private readonly handle: FileHandle) {
    super(handle);
  }

  override async init(): Promise<void> {
    this.size = (await this.handle.stat()).size;
  }

  override async readUint8Array(position: number, length: number): Promise<Uint8Array> {
    const { buffer, bytesRead } = await this.handle.read({ buffer: Buffer.alloc(length), position });
    return buffer.subarray(0, bytesRead);
  }
}

/** Some ten times as fast as the one in script. */
function startPlatformSha256(): RunningSha256 {
  const hash = createHash('sha256');
  return { add: (piece) => void hash.update(piece), hex: () => hash.digest('hex') };
}
