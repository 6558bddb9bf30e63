import type { Reading } from '../../../../shared/kernel/reading.js';
import { ProblemException, problemOfStatus } from './problem.js';

/** Where an input came from: the body of the request, or the query of its address. */
export type InputSource = 'request' | 'query';

/**
 * The value of an input that could be read.
 * @throws ProblemException 422 naming every fault by its pointer
 */
export function readInput<T>(reading: Reading<T>, source: InputSource = 'request'): T {
  if (reading.ok) return reading.value;
  throw new ProblemException({ ...problemOfStatus(422), source, errors: reading.errors });
}
