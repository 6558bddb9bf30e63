import type { AskError } from '../ask/ask-error.js';
import { useTell } from '../ask/use-tell.js';
import type { RequestView } from './request-answers.js';

export const REQUEST_TOUCHES = ['/api/requests', '/api/incidents', '/api/tasks'];

export interface RequestStepping {
  /** Sends a step on the version that is shown; true once it is there. */
  readonly send: (what: string, body: object) => Promise<boolean>;
  readonly pending: boolean;
  readonly error: AskError | null;
}

/** Steps of a request, such as how it stands now. */
export function useRequestStep({ id, version }: RequestView): RequestStepping {
  const { does, pending, error } = useTell();
  const send = (what: string, body: object): Promise<boolean> =>
    does(`/api/requests/${id}/${what}`, { method: 'POST', body, version }, REQUEST_TOUCHES);
  return { send, pending, error };
}
