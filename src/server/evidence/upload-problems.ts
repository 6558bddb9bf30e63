import { type IncomingFiles, NoRoomError } from '../platform/storage/incoming-files.js';
import { ProblemException, problemOfStatus } from '../platform/http/problem.js';

/** Says where the next piece begins; a device, which cannot ask for it, learns it from here. */
export function wrongOffset(offset: number): ProblemException {
  return problemAt(409, offset, `Send the piece that begins at byte ${offset}.`);
}

export function problemAt(status: number, offset: number, detail: string): ProblemException {
  return new ProblemException({ ...problemOfStatus(status, detail), current: { offset } });
}

/**
 * Has it kept only where the disk has room.
 * @throws ProblemException 503
 */
export async function assertRoom(incoming: IncomingFiles, bytes: number): Promise<void> {
  try {
    await incoming.assertRoom(bytes);
  } catch (error) {
    if (!(error instanceof NoRoomError)) throw error;
    throw new ProblemException(
      problemOfStatus(503, 'The disk of the service is full: keep the file, and send it later.'),
    );
  }
}

/** Whether a piece ended before its end because the line did. */
export function isBrokenOff(error: unknown): boolean {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  return ['ECONNRESET', 'ERR_STREAM_PREMATURE_CLOSE', 'ABORT_ERR', 'EPIPE'].includes(String(code));
}

/**
 * The header Upload-Offset: a whole number of bytes.
 * @throws ProblemException 400
 */
export function readOffset(header: string | undefined): number {
  if (header !== undefined && /^\d{1,15}$/.test(header)) return Number(header);
  throw new ProblemException({
    ...problemOfStatus(
      400,
      'Send Upload-Offset: the number of the byte at which this piece begins, 0 at first.',
    ),
    type: '/problems/no-upload-offset',
    title: 'A piece of a file says where it begins',
  });
}
