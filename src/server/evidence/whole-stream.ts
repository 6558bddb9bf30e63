import { createHash } from 'node:crypto';
import { pipeline, type Readable, Transform } from 'node:stream';
import type { FileDigest } from '../platform/storage/file-store.js';

/**
 * The same stream, which breaks off at its end where it was not what it should be: whoever downloads an original then
 * sees a download that failed, and not a file that somebody changed.
 */
export function wholeStream(source: Readable, { sha256, size }: FileDigest): Readable {
  const hash = createHash('sha256');
  let left = size;
  const check = new Transform({
    transform(piece: Buffer, _encoding, done) {
      hash.update(piece);
      left -= piece.length;
      // The last byte waits for the verdict: with it a file that was changed would be complete.
      if (left > 0 || hash.copy().digest('hex') === sha256) done(null, piece);
      else done(changed());
    },
    flush(done) {
      done(left === 0 ? null : changed());
    },
  });
  // Errors end the stream that is handed on; there is nothing else to be done about them here.
  return pipeline(source, check, () => undefined);
}

function changed(): Error {
  return new Error('What is kept is not what arrived: check the record.');
}
