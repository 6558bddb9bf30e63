import type { FieldError } from '../../../../shared/kernel/field-error.js';

export const PROBLEM_MEDIA_TYPE = 'application/problem+json; charset=utf-8';

/** The body of every answer that is not what was asked for (RFC 9457, application/problem+json). */
export interface ProblemDocument {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly errors: readonly FieldError[];
  /** `request`, where the service read a document: the same member as on the command line. */
  readonly source?: string;
  /** For a fault of ours: the number under which it stands in the log. */
  readonly instance?: string;
  /** For a change made on another version: what stands there now, and what was sent. */
  readonly current?: unknown;
  readonly yours?: unknown;
  /** For too many tries: when the next one may do. Also sent as Retry-After. */
  readonly retryAfterSeconds?: number;
}

/** Thrown by whoever knows what is wrong; the filter sends it as it is. */
export class ProblemException extends Error {
  constructor(readonly problem: ProblemDocument) {
    super(problem.title);
  }
}

/** What each status of the service itself means; other statuses are faults of ours. */
const KINDS: Readonly<Record<number, { type: string; title: string }>> = {
  400: { type: '/problems/unreadable-input', title: 'The input cannot be read as JSON' },
  401: { type: '/problems/sign-in-needed', title: 'Sign in first' },
  403: { type: '/problems/not-allowed', title: 'That is not yours to do' },
  404: { type: '/problems/not-found', title: 'There is nothing at this address' },
  405: { type: '/problems/method-not-allowed', title: 'This address does not take that method' },
  408: { type: '/problems/too-slow', title: 'The request took too long to arrive' },
  409: { type: '/problems/conflict', title: 'That does not go together with what is there' },
  412: {
    type: '/problems/changed-meanwhile',
    title: 'Somebody changed it meanwhile: both versions are here',
  },
  413: { type: '/problems/too-large', title: 'The body is larger than the service takes' },
  414: { type: '/problems/address-too-long', title: 'The address is longer than the service takes' },
  415: { type: '/problems/unsupported-media-type', title: 'The body must be sent as application/json' },
  422: { type: '/problems/invalid-input', title: 'The input cannot be used as it stands' },
  428: { type: '/problems/version-not-named', title: 'A change has to name the version that it changes' },
  429: { type: '/problems/too-many-tries', title: 'Too many tries' },
  500: { type: '/problems/internal-error', title: 'The service failed: nothing was determined' },
  503: { type: '/problems/unavailable', title: 'The service cannot do that now: try again' },
};

/**
 * The problem of a status, with one fault for the document as a whole.
 * @example problemOfStatus(404, 'No page /x').type // '/problems/not-found'
 */
export function problemOfStatus(status: number, detail?: string): ProblemDocument {
  const known = KINDS[status] === undefined ? 500 : status;
  const kind = KINDS[known] as { type: string; title: string };
  return { ...kind, status: known, errors: detail === undefined ? [] : [{ pointer: '', detail }] };
}
