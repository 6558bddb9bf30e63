import { PassThrough, type Readable } from 'node:stream';
import { ZipFile } from 'yazl';

/** One file of an archive, opened only when its turn comes. */
export interface ZipEntry {
  readonly path: string;
  readonly size: number;
  /** Pictures and videos are packed already. */
  readonly compress: boolean;
  readonly open: () => Readable;
}

const READABLE_BY_OWNER = 0o100600;

/**
 * Writes an archive as a stream, one file after the other and none of them into memory. The same entries on the same day
 * are the same bytes. An entry that breaks off breaks the archive: nobody takes half of it for whole.
 * @param madeAt RFC 3339; entries bear its day, at noon, as archives know no zones
 */
export function writePacketZip(entries: readonly ZipEntry[], madeAt: string): Readable {
  const zip = new ZipFile();
  const out = new PassThrough();
  let current: Readable | undefined;
  const made = new Date(madeAt);
  const mtime = new Date(made.getUTCFullYear(), made.getUTCMonth(), made.getUTCDate(), 12);
  for (const { path, size, compress, open } of entries) {
    const options = { size, compress, mtime, mode: READABLE_BY_OWNER, forceDosTimestamp: true };
    zip.addReadStreamLazy(path, options, (take) => {
      current = open();
      current.once('error', (error) => out.destroy(error));
      take(null, current);
    });
  }
  zip.once('error', (error: Error) => out.destroy(error));
  // Whoever stops downloading leaves nothing open.
  out.once('close', () => current?.destroy());
  zip.outputStream.pipe(out);
  zip.end();
  return out;
}
