import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { tellPacketCheck } from '../../shared/hand-over/tell-packet-check.js';
import { checkPacket } from '../../src/server/hand-over/hand-over.api.js';

/** What `verify` says of an archive, line by line. */
export async function checkZip(
  archive: Buffer,
  heads: { size: number; root: string }[] = [],
  roots: Uint8Array[] = [],
): Promise<string[]> {
  const folder = await mkdtemp(join(tmpdir(), 'packet-'));
  try {
    await writeFile(join(folder, 'packet.zip'), archive);
    return tellPacketCheck(
      await checkPacket(join(folder, 'packet.zip'), heads, undefined, roots),
      heads.length,
    );
  } finally {
    await rm(folder, { recursive: true });
  }
}
