import type { FieldError } from '../kernel/field-error.js';

/** What is answered instead of a determination when the input cannot be used (RFC 9457). */
export interface Problem {
  /** URI reference of the kind of problem. */
  readonly type: string;
  readonly title: string;
  readonly status: ProblemStatus;
  /** The path as typed, `-` for standard input, `request` in the service. */
  readonly source: string;
  readonly errors: readonly FieldError[];
}

/** 400: unreadable or not JSON. 422: JSON, but not facts that can be determined. */
export type ProblemStatus = 400 | 422;

const KINDS: Readonly<Record<ProblemStatus, { type: string; title: string }>> = {
  400: { type: '/problems/unreadable-input', title: 'The input cannot be read as JSON' },
  422: { type: '/problems/invalid-facts', title: 'The facts cannot be used as they stand' },
};

/**
 * The problem of one input.
 * @example problemOf(422, [{ pointer: '/weather', detail: 'No such member: take it out.' }], 'request').type
 * // '/problems/invalid-facts'
 */
export function problemOf(status: ProblemStatus, errors: readonly FieldError[], source: string): Problem {
  return { ...KINDS[status], status, source, errors };
}
