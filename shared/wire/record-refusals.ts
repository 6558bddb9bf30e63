import type { FieldError } from '../kernel/field-error.js';
import { jsonPointer } from '../kernel/json-pointer.js';
import { findRefusedNumber, type RefusedNumber } from '../record/find-refused-number.js';

type Tokens = readonly (string | number)[];

/** Deeper than anything in the record; a document beyond it is refused before it is looked at. */
const DEEPEST = 24;

const REASONS: Readonly<Record<RefusedNumber, string>> = {
  'card-number':
    'Holds what looks like a payment card number. The record keeps none: take it out, and say only that a card was used.',
  'social-security-number':
    'Holds what looks like a Social Security number. The record keeps none: take it out.',
};

/** Stands in a pointer for a name that is itself such a number, so that no error repeats it. */
const UNNAMED = '(a number that is not kept)';

/**
 * Card and Social Security numbers anywhere in a document, its numbers and the names of its members included, each at
 * the pointer of its field and never repeated.
 * @example findRefusals({ said: 'card 4111 1111 1111 1111' }, [])[0]?.pointer // '/said'
 */
export function findRefusals(value: unknown, at: Tokens): FieldError[] {
  if (typeof value === 'string' || Number.isInteger(value)) {
    const found = findRefusedNumber(String(value));
    return found === null ? [] : [{ pointer: jsonPointer(at), detail: REASONS[found] }];
  }
  if (typeof value !== 'object' || value === null) return [];
  if (at.length > DEEPEST)
    return [{ pointer: '', detail: `Must not be nested deeper than ${DEEPEST} levels.` }];
  if (Array.isArray(value)) {
    return value.flatMap((item: unknown, index) => findRefusals(item, [...at, index]));
  }
  return Object.entries(value).flatMap(([name, member]) => {
    const found = findRefusedNumber(name);
    const here = [...at, found === null ? name : UNNAMED];
    const named = found === null ? [] : [{ pointer: jsonPointer(here), detail: REASONS[found] }];
    return [...named, ...findRefusals(member, here)];
  });
}
