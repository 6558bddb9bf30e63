import type { Readable } from 'node:stream';

/** What a file is, byte for byte. */
export interface FileDigest {
  /** 64 hexadecimal digits. */
  readonly sha256: string;
  /** Bytes. */
  readonly size: number;
}

/** Which file: what is in it, and whose it is, so that taking out one never takes out another with the same bytes. */
export interface FileKey {
  readonly id: string;
  readonly sha256: string;
}

/** Where files are kept as they came. Nothing is ever changed in one: it is put, read and deleted. */
export abstract class FileStore {
  /** Keeps the stream to its end; once this is fulfilled the file outlives a power cut. The same again is no harm. */
  abstract put(id: string, source: Readable): Promise<FileDigest>;

  abstract read(key: FileKey): Readable;

  /** Its size in bytes; undefined when it is not there. */
  abstract sizeOf(key: FileKey): Promise<number | undefined>;

  /** What is not there is deleted already. */
  abstract delete(key: FileKey): Promise<void>;
}
