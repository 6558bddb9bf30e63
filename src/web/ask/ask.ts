import { noteServerTime } from '../device/clock-offset.js';
import { pickedPerson } from '../session/picked-person.js';
import { session } from '../session/session-state.js';
import { askToSignInAgain } from '../session/sign-in-again.js';
import { AskError, errorOf, type Problem, unreachable } from './ask-error.js';

/** Set by the worker on what it had kept, since there was no signal. */
export const KEPT_HERE = 'desk-kept';

export type Method = 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';

export interface Asking {
  readonly method?: Method;
  /** Sent as JSON; a Blob is sent as it is. */
  readonly body?: unknown;
  /** The version that is changed: sent as If-Match. */
  readonly version?: number;
  /** The key of a create, the same on each retry of it. */
  readonly key?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly signal?: AbortSignal;
  /** Is told the headers of what came, such as that the worker had kept it. */
  readonly onHeaders?: (headers: Headers) => void;
  /** Do not offer to sign in again: whoever asks deals with 401. */
  readonly quiet?: boolean;
}

/**
 * Asks the service. Where the session ended, it asks the person to sign in again in place and then sends the same once
 * more, so that nothing that was typed is lost.
 * @throws AskError always, and nothing else: `trouble` says which kind
 */
export async function ask<Answer>(path: string, asking: Asking = {}): Promise<Answer> {
  try {
    return await send<Answer>(path, asking);
  } catch (error) {
    if (!(error instanceof AskError) || error.trouble !== 'sign-in' || asking.quiet) throw error;
    if (!(await askToSignInAgain())) throw error;
    return send<Answer>(path, asking);
  }
}

async function send<Answer>(path: string, asking: Asking): Promise<Answer> {
  const response = await reach(path, asking);
  if (response.headers.get(KEPT_HERE) === null) noteServerTime(response.headers.get('date'));
  asking.onHeaders?.(response.headers);
  if (response.status === 204) return undefined as Answer;
  const body = await readJson(response);
  if (response.ok) return body as Answer;
  if (!isProblem(body)) throw unreachable();
  throw errorOf(body);
}

async function reach(path: string, { method = 'GET', body, signal, ...asking }: Asking): Promise<Response> {
  try {
    return await fetch(path, {
      method,
      headers: headersOf(body, asking),
      ...(body !== undefined && { body: body instanceof Blob ? body : JSON.stringify(body) }),
      ...(signal !== undefined && { signal }),
    });
  } catch {
    throw unreachable();
  }
}

function headersOf(body: unknown, { version, key, headers }: Asking): Record<string, string> {
  return {
    accept: 'application/json, application/problem+json',
    ...(body !== undefined && !(body instanceof Blob) && { 'content-type': 'application/json' }),
    ...(version !== undefined && { 'if-match': `"${version}"` }),
    ...(key !== undefined && { 'idempotency-key': key }),
    ...nameOnDevice(),
    ...headers,
  };
}

/** On a shared device, whose name was picked; what was queued says its own. */
function nameOnDevice(): Record<string, string> {
  const { me, device } = session.value;
  const picked = pickedPerson.value;
  return me === null && device !== null && picked !== null ? { 'desk-person': picked.accountId } : {};
}

/** What is no JSON came from something between, such as the sign-in page of a hotel: the service was not reached. */
async function readJson(response: Response): Promise<unknown> {
  try {
    return await response.json();
  } catch {
    throw unreachable();
  }
}

function isProblem(body: unknown): body is Problem {
  return typeof body === 'object' && body !== null && 'status' in body && 'errors' in body;
}
