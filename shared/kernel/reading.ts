import type { FieldError } from './field-error.js';

/** What came of reading an input: the value that was sent, or every fault of it at its own pointer. */
export type Reading<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly errors: readonly FieldError[] };
