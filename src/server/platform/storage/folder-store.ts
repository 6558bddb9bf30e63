import { createHash, randomUUID } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { type FileHandle, open, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import {
  ARRIVING,
  makePrivateFolder,
  moveInto,
  piecesOf,
  PRIVATE_FILE,
  READ_BYTES,
  sizeOfFile,
} from './durable-files.js';
import { type FileDigest, type FileKey, FileStore } from './file-store.js';

/**
 * Files in a folder, each under `files/` by its SHA-256: `files/ab/abcd….ID`. Whoever has a copy of the folder can hold
 * every file against its own name with `sha256sum`, without the database.
 */
export class FolderStore extends FileStore {
  constructor(private readonly folder: string) {
    super();
  }

  async put(id: string, source: Readable): Promise<FileDigest> {
    const pieces = piecesOf(source);
    const arriving = join(this.folder, ARRIVING);
    await makePrivateFolder(arriving);
    const temporary = join(arriving, randomUUID());
    try {
      const digest = await writeDurably(temporary, pieces);
      await moveInto(temporary, this.pathOf({ id, sha256: digest.sha256 }));
      return digest;
    } finally {
      await rm(temporary, { force: true });
    }
  }

  read(key: FileKey): Readable {
    return createReadStream(this.pathOf(key), { highWaterMark: READ_BYTES });
  }

  sizeOf(key: FileKey): Promise<number | undefined> {
    return sizeOfFile(this.pathOf(key));
  }

  async delete(key: FileKey): Promise<void> {
    await rm(this.pathOf(key), { force: true });
  }

  private pathOf({ id, sha256 }: FileKey): string {
    return join(this.folder, 'files', sha256.slice(0, 2), `${sha256}.${id}`);
  }
}

async function writeDurably(path: string, pieces: AsyncIterable<Buffer>): Promise<FileDigest> {
  const handle: FileHandle = await open(path, 'wx', PRIVATE_FILE);
  try {
    const hash = createHash('sha256');
    let size = 0;
    for await (const piece of pieces) {
      hash.update(piece);
      size += piece.length;
      await handle.appendFile(piece);
    }
    await handle.sync();
    return { sha256: hash.digest('hex'), size };
  } finally {
    await handle.close();
  }
}
