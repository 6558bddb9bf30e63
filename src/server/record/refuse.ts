import { ProblemException, problemOfStatus } from '../platform/http/problem.js';

/** Says no to what was asked, at one place of what was sent; never with a value of it. */
export function refuse(status: 403 | 404 | 409 | 422, detail: string, pointer = ''): never {
  throw new ProblemException({
    ...problemOfStatus(status),
    source: 'request',
    errors: [{ pointer, detail }],
  });
}
