import type { FieldError } from '../kernel/field-error.js';
import type { Reading } from '../kernel/reading.js';
import { parsePosition } from '../place/parse-position.js';
import { findRecordFaults } from './record-faults.js';
import type { ValueRule } from './record-members.js';
import { line, listOf, number, text } from './record-values.js';
import { sortFaults } from './sort-faults.js';

/** A line that says something. */
export function words(what: string, longest = 200): ValueRule {
  const expected = `${what}: one line of 1 to ${longest} characters`;
  return {
    expected,
    faultOf: (value) =>
      typeof value === 'string' && value.trim() !== '' && value.length <= longest && !/[\n\r]/.test(value)
        ? line.faultOf(value)
        : `Must be ${expected}.`,
    schema: { type: 'string', minLength: 1, maxLength: longest, pattern: '^[^\\n\\r]*\\S[^\\n\\r]*$' },
  };
}

/** A text of several lines that says something. */
export function account(what: string, longest: number): ValueRule {
  const expected = `${what}: 1 to ${longest} characters`;
  return {
    expected,
    faultOf: (value) =>
      typeof value === 'string' && value.trim() !== '' && value.length <= longest
        ? text.faultOf(value)
        : `Must be ${expected}.`,
    schema: { type: 'string', minLength: 1, maxLength: longest },
  };
}

export function wholeNumber(low: number, high: number, of: string): ValueRule {
  const rule = number(low, high, of);
  return {
    expected: rule.expected,
    faultOf: (value) => (Number.isInteger(value) ? rule.faultOf(value) : `Must be ${rule.expected}.`),
    schema: { type: 'integer', minimum: low, maximum: high },
  };
}

/** Up to the largest that a column of cents holds. */
export const cents = wholeNumber(0, 2_147_483_647, 'a whole number of cents');

const PHONE = 'a telephone number, such as 580-555-0123 or 911';
export const phone: ValueRule = {
  expected: PHONE,
  faultOf: (value) =>
    typeof value === 'string' &&
    /^\+?[\d ().-]{3,30}( ?(x|ext\.?) ?\d{1,8})?$/i.test(value) &&
    /\d{3}/.test(value)
      ? null
      : `Must be ${PHONE}.`,
  schema: { type: 'string', examples: ['580-555-0123', '911'] },
};

const MAIL = 'a mail address';
export const mail: ValueRule = {
  expected: MAIL,
  faultOf: (value) =>
    typeof value === 'string' && value.length <= 254 && /^[^\s@]+@[^\s@]+\.[^\s@]+$/.test(value)
      ? line.faultOf(value)
      : `Must be ${MAIL}.`,
  schema: { type: 'string', format: 'email' },
};

/** Any notation in which positions are written or said. */
export const positionAsWritten: ValueRule = {
  expected: 'a position, for example 33.818, -96.571',
  faultOf: (value) => {
    if (typeof value !== 'string') return 'Must be a position as text, for example 33.818, -96.571.';
    const position = parsePosition(value);
    return position.ok ? null : position.detail;
  },
  schema: { type: 'string', examples: ['33 49.08 N 96 34.26 W', '33.818, -96.571', '14S QC 2204 4811'] },
};

export const photographs = listOf(words('a photograph by the id or name it is kept under'), 'photographs');

/**
 * Reads an input of the fleet by its class; every fault at its pointer. Card numbers are not looked for here: policy
 * and engine numbers look like some.
 * @param related finds what is wrong between members that are each right
 * @example readFleetInput(ReleaseAmountDto, {}).ok // false
 */
export function readFleetInput<T extends object>(
  shape: new () => T,
  input: unknown,
  related: (value: T) => readonly FieldError[] = () => [],
): Reading<T> {
  const faults = sortFaults(findRecordFaults(shape, input, []));
  const errors = faults.length > 0 ? faults : related(input as T);
  return errors.length > 0 ? { ok: false, errors } : { ok: true, value: input as T };
}
