import type { FieldError } from '../kernel/field-error.js';
import type { FieldEdit } from './find-changes.js';

/** Words of a person that are on record: they stay, and a correction is added beside them. */
const STATEMENT_WORDS = /^\/statements\/[^/]+\/words$/;
const ADDENDUM = /^\/statements\/[^/]+\/addenda\/[^/]+\/words$/;

/** Whether an amendment changes or removes what stood there, rather than adding to it. */
export function altersWords(edits: readonly FieldEdit[]): boolean {
  return edits.some(({ from, to }) => from !== null && !(isList(from) && isList(to) && keepsAll(from, to)));
}

/**
 * Changes that nobody may make in a finished section, at the paths of the fields.
 * @example
 * findForbiddenChanges([{ path: '/statements/s1/words', from: 'I looked.', to: 'I did not look.' }])
 * // [{ pointer: '/statements/s1/words', detail: 'A statement stays as it was given: …' }]
 */
export function findForbiddenChanges(edits: readonly FieldEdit[]): FieldError[] {
  return edits
    .filter(({ path, from }) => from !== null && (STATEMENT_WORDS.test(path) || ADDENDUM.test(path)))
    .map(({ path }) => ({
      pointer: path,
      detail: 'A statement stays as it was given: add the correction under addenda, or withdraw the field.',
    }));
}

function isList(value: unknown): value is readonly unknown[] {
  return Array.isArray(value);
}

/** An item added to a list alters nothing that was said before. */
function keepsAll(from: readonly unknown[], to: readonly unknown[]): boolean {
  return from.every((item) => to.includes(item));
}
