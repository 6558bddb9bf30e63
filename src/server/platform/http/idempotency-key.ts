import { ProblemException, problemOfStatus } from './problem.js';

/** Long enough that no two clients choose the same by chance, as a UUID is. */
const KEY = /^[\x21-\x7e]{16,200}$/;

/**
 * The key of a create, the same on each retry of it (draft-ietf-httpapi-idempotency-key-header).
 * @throws ProblemException 400 without one: a create that cannot be told from its retry is not taken
 */
export function readIdempotencyKey(header: string | undefined): string {
  // The draft writes the key as a quoted string; many clients send it bare.
  const key = header?.trim().replace(/^"(.*)"$/, '$1') ?? '';
  if (KEY.test(key)) return key;
  throw new ProblemException({
    ...problemOfStatus(
      400,
      'Send Idempotency-Key: 16 to 200 characters such as a UUID, new for each thing created and kept for its retries.',
    ),
    type: '/problems/no-idempotency-key',
    title: 'A create needs a key of its own',
  });
}
