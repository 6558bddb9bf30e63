import { ProblemException, problemOfStatus } from './problem.js';

/**
 * Says no to what was asked, at one place of what was sent; never with a value of it.
 * @throws ProblemException always
 */
export function refuse(status: 403 | 404 | 409 | 422, detail: string, pointer = ''): never {
  throw new ProblemException({
    ...problemOfStatus(status),
    source: 'request',
    errors: [{ pointer, detail }],
  });
}
