import { createReadStream } from 'node:fs';
import { open, rm, statfs, truncate } from 'node:fs/promises';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { makePrivateFolder, piecesOf, PRIVATE_FILE, READ_BYTES, sizeOfFile } from './durable-files.js';

/** Kept free for everything else: the record lies on the same disk, and a call for help comes before a photograph. */
const RESERVE_BYTES = 256 * 1024 * 1024;

/** The disk is too full for what is to be kept. */
export class NoRoomError extends Error {}

/** More bytes came than were announced; what came before them is kept. */
export class TooManyBytesError extends Error {}

/**
 * Files that are still arriving, piece by piece, in the folder `incoming/`. How much of one has arrived is told by its
 * size alone, so that no crash can leave two answers.
 */
export class IncomingFiles {
  constructor(private readonly folder: string) {}

  /** For readers of file types, which need to jump about in it. */
  pathOf(id: string): string {
    return join(this.folder, 'incoming', id);
  }

  /** @throws NoRoomError unless as many bytes may be written */
  async assertRoom(bytes: number): Promise<void> {
    await makePrivateFolder(this.folder);
    const { bavail, bsize } = await statfs(this.folder);
    if (bavail * bsize < bytes + RESERVE_BYTES) throw new NoRoomError();
  }

  /** Bytes that have arrived. */
  async offsetOf(id: string): Promise<number> {
    return (await sizeOfFile(this.pathOf(id))) ?? 0;
  }

  /**
   * Adds a stream at the end. Whatever had come when it broke off is kept, and safe through a power cut.
   * @param longest the size that the file may then have
   * @throws TooManyBytesError; whatever the stream throws
   */
  async append(id: string, source: Readable, longest: number): Promise<void> {
    const pieces = piecesOf(source);
    await makePrivateFolder(join(this.folder, 'incoming'));
    const handle = await open(this.pathOf(id), 'a', PRIVATE_FILE);
    try {
      let { size } = await handle.stat();
      for await (const piece of pieces) {
        size += piece.length;
        if (size > longest) throw new TooManyBytesError();
        await handle.appendFile(piece);
      }
    } finally {
      await handle.sync();
      await handle.close();
    }
  }

  read(id: string): Readable {
    return createReadStream(this.pathOf(id), { highWaterMark: READ_BYTES });
  }

  /** Back to nothing, for a file that arrived with other bytes than it had where it came from. */
  async startOver(id: string): Promise<void> {
    await truncate(this.pathOf(id));
  }

  async drop(id: string): Promise<void> {
    await rm(this.pathOf(id), { force: true });
  }
}
