import { KeyUsedBeforeError } from '../database/create-once.js';
import { DatabaseError, type DatabaseErrorCode } from '../database/database-errors.js';
import { type ProblemDocument, problemOfStatus } from './problem.js';

/** What the client can do about it, by code; whatever is not here is a fault of ours. */
const ANSWERS: Partial<Record<DatabaseErrorCode, [status: number, detail: string]>> = {
  'DATABASE.UNIQUE': [409, 'There is already one like it.'],
  'DATABASE.BUSY': [503, 'Others were writing for too long. Nothing was changed: send it again.'],
  'DATABASE.CONFLICT': [503, 'Others changed the same things meanwhile. Nothing was changed: send it again.'],
  'DATABASE.CONNECTION': [503, 'The database does not answer: whether anything was kept is not known.'],
};

const KEY_USED_BEFORE: ProblemDocument = {
  ...problemOfStatus(422, 'Nothing was kept of this request: send it with a new key.'),
  type: '/problems/idempotency-key-used',
  title: 'This Idempotency-Key was used before with another body',
};

/** The problem of a failure that the database foresees; undefined for any other error. */
export function problemOfDatabase(error: unknown): ProblemDocument | undefined {
  if (error instanceof KeyUsedBeforeError) return KEY_USED_BEFORE;
  if (!(error instanceof DatabaseError)) return undefined;
  const answer = ANSWERS[error.code];
  return answer && problemOfStatus(...answer);
}
