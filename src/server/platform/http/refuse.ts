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

/**
 * Says that it is there already, with what stands there, so that whoever asked can go on with that.
 * @throws ProblemException 409 always
 */
export function refuseForCurrent(detail: string, pointer: string, current: object): never {
  throw new ProblemException({
    ...problemOfStatus(409),
    source: 'request',
    errors: [{ pointer, detail }],
    current,
  });
}
