import type { FieldError } from '../kernel/field-error.js';
import type { FieldEdit } from './find-changes.js';

/** What stays as it was once it is on record, with what to do instead. */
const LASTING: readonly (readonly [RegExp, string])[] = [
  [
    /^\/statements\/[^/]+\/(addenda\/[^/]+\/)?words$/,
    'A statement stays as it was given: add the correction under addenda, or withdraw the field.',
  ],
  [
    /^\/handedOver\/[^/]+\/(what|to|sheet\/.+)$/,
    'What an authority was given stays as it was logged: log what was given later as another item.',
  ],
];

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
  return edits.flatMap(({ path, from }) => {
    const [, detail] = LASTING.find(([lasting]) => lasting.test(path)) ?? [];
    return from === null || detail === undefined ? [] : [{ pointer: path, detail }];
  });
}

function isList(value: unknown): value is readonly unknown[] {
  return Array.isArray(value);
}

/** An item added to a list alters nothing that was said before. */
function keepsAll(from: readonly unknown[], to: readonly unknown[]): boolean {
  return from.every((item) => to.includes(item));
}
