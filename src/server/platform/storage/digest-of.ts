import { createHash } from 'node:crypto';
import type { Readable } from 'node:stream';
import type { FileDigest } from './file-store.js';

/** What a stream holds, read to its end. */
export async function digestOf(source: Readable): Promise<FileDigest> {
  const hash = createHash('sha256');
  let size = 0;
  for await (const piece of source as AsyncIterable<Buffer>) {
    hash.update(piece);
    size += piece.length;
  }
  return { sha256: hash.digest('hex'), size };
}
