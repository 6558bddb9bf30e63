import { AskError } from '../ask/ask-error.js';
import { ask } from '../ask/ask.js';
import { queueRequest } from '../device/outbox.js';

interface Request {
  readonly line: string;
  /** What it is, for people. */
  readonly about: string;
  readonly path: string;
  readonly body: unknown;
  /** The same on each try, so that it is done once. */
  readonly key: string;
  /** It makes the thing that others of its line add to. */
  readonly opens?: boolean;
}

/**
 * Sends what is to be made and gives the answer; where there is no signal it is kept on this device, which sends it
 * later, once, and null comes back.
 * @throws AskError where the service does not take it
 */
export async function sendOrKeep<Answer>(request: Request): Promise<Answer | null> {
  const { path, body, key } = request;
  try {
    return await ask<Answer>(path, { method: 'POST', body, key });
  } catch (error) {
    if (!(error instanceof AskError) || error.trouble !== 'unreachable') throw error;
    await queueRequest({ ...request, method: 'POST' });
    return null;
  }
}
