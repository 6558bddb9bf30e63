import { PassThrough, type Readable } from 'node:stream';
import { ZipFile } from 'yazl';
import { foldPath, isPlainPath } from '../../../shared/hand-over/plain-path.js';

/** One file of an archive, opened only when its turn comes. */
export interface ZipEntry {
  readonly path: string;
  /** Bytes. */
  readonly size: number;
  readonly open: () => Readable;
}

export interface PacketZip {
  readonly bytes: Readable;
  /** How many there are of them, known before the first is read. */
  readonly size: number;
}

const READABLE_BY_OWNER = 0o100600;
/** Of so many files the list is written with 64 bits: of longer ones the library foretells a size that is not theirs. */
const MANY = 256;

/**
 * Writes an archive as a stream, one file after the other and none of them into memory. Nothing is compressed, so that
 * the same entries on the same day are the same bytes under every version of Node.js, and their number is told before.
 * An entry that breaks off breaks the archive: nobody takes half of it for whole.
 * @param madeAt RFC 3339; entries bear its day, at noon, as archives know no zones
 * @throws RangeError for a name that is not plain, or that stands there already where capital letters do not count
 */
export function writePacketZip(entries: readonly ZipEntry[], madeAt: string): PacketZip {
  assertPlain(entries);
  const zip = new ZipFile();
  const out = new PassThrough();
  let current: Readable | undefined;
  const made = new Date(madeAt);
  const mtime = new Date(made.getUTCFullYear(), made.getUTCMonth(), made.getUTCDate(), 12);
  for (const { path, size, open } of entries) {
    const options = { size, compress: false, mtime, mode: READABLE_BY_OWNER, forceDosTimestamp: true };
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
  let size = Number.NaN;
  const learn = (total: number): void => void (size = total);
  // The types of the library forget that it says the size.
  zip.end({ forceZip64Format: entries.length > MANY, comment: '' }, learn as () => void);
  return { bytes: out, size };
}

function assertPlain(entries: readonly ZipEntry[]): void {
  const taken = new Set<string>();
  for (const { path } of entries) {
    if (!isPlainPath(path))
      throw new RangeError(`${JSON.stringify(path)} is no name for a file of a packet.`);
    if (taken.has(foldPath(path))) throw new RangeError(`${path} stands in the packet already.`);
    taken.add(foldPath(path));
  }
}
