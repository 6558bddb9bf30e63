import type { FieldError } from '../../../shared/kernel/field-error.js';

/** What went wrong, in the words that a page needs to choose what to show. */
export type Trouble =
  'unreachable' | 'sign-in' | 'not-yours' | 'not-there' | 'changed-meanwhile' | 'refused' | 'busy' | 'broken';

/** The body of an RFC 9457 problem as the service sends it. */
export interface Problem {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly errors: readonly FieldError[];
  readonly instance?: string;
  readonly current?: unknown;
  readonly yours?: unknown;
  readonly retryAfterSeconds?: number;
}

/** An answer that is not what was asked for, or none. `errors` name each fault by its pointer. */
export class AskError extends Error {
  constructor(
    readonly trouble: Trouble,
    readonly problem: Problem,
  ) {
    super(problem.title);
  }

  get errors(): readonly FieldError[] {
    return this.problem.errors;
  }

  /** What is wrong at a place of what was sent, such as `/name`; null where nothing is. */
  faultAt(pointer: string): string | null {
    return this.errors.find((error) => error.pointer === pointer)?.detail ?? null;
  }
}

const BY_STATUS: Readonly<Record<number, Trouble>> = {
  401: 'sign-in',
  403: 'not-yours',
  404: 'not-there',
  412: 'changed-meanwhile',
  429: 'busy',
  503: 'busy',
};

/** The error of a problem that the service sent. */
export function errorOf(problem: Problem): AskError {
  const { status } = problem;
  return new AskError(BY_STATUS[status] ?? (status < 500 ? 'refused' : 'broken'), problem);
}

/** The error where no answer came: no signal, the service is down, or something between that answers for it. */
export function unreachable(): AskError {
  return new AskError('unreachable', { type: 'about:blank', title: '', status: 0, errors: [] });
}
