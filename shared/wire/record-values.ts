import { casualtyTypeSlugs } from '../vocabulary/casualty-types.js';
import { treatmentSlugs } from '../vocabulary/treatments.js';
import { isDateTime } from './check-date-time.js';
import { isTimeZone } from './check-time-zone.js';
import { numberFault, wordFault, type FaultOf } from './declare-fact.js';
import { stateCodeFault } from './place.dto.js';
import type { JsonSchema, ValueRule } from './record-members.js';

/** The longest text of one field: an hour's statement, written down. */
const LONGEST_TEXT = 50_000;
const LONGEST_LINE = 500;
const LONGEST_LIST = 200;

/** Characters that no keyboard gives and no database keeps alike, and halves of characters. */
const UNWRITABLE = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\p{Surrogate}]/u;

function textRule(longest: number): ValueRule {
  const expected = `text of at most ${longest} characters`;
  return {
    expected,
    faultOf: (value) => {
      if (typeof value !== 'string' || value.length > longest) return `Must be ${expected}.`;
      return UNWRITABLE.test(value) ? 'Must hold no control characters and no halves of characters.' : null;
    },
    schema: { type: 'string', maxLength: longest },
  };
}

export const text = textRule(LONGEST_TEXT);
export const line = textRule(LONGEST_LINE);

const ID = /^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$/;
export const id: ValueRule = {
  expected: 'an id of letters, digits, dashes and underscores, such as p1, that no other of the list has',
  faultOf: (value) =>
    typeof value === 'string' && ID.test(value)
      ? null
      : 'Must be 1 to 64 letters, digits, dashes and underscores, beginning with a letter or digit.',
  schema: { type: 'string', pattern: ID.source },
};

/** Outside of these years a date is a slip, and clocks could not be computed from it. */
const YEAR = /^(19|20|21)\d\d-/;

const INSTANT = 'an instant with its offset, such as 2026-06-13T11:20:00-05:00 (RFC 3339)';
export const instant: ValueRule = {
  expected: INSTANT,
  faultOf: (value) =>
    typeof value === 'string' && YEAR.test(value) && isDateTime(value) ? null : `Must be ${INSTANT}.`,
  schema: { type: 'string', format: 'date-time' },
};

const DAY = 'a day of the calendar, such as 2026-06-13';
export const day: ValueRule = {
  expected: DAY,
  faultOf: (value) =>
    typeof value === 'string' && YEAR.test(value) && value.length === 10 && isDateTime(`${value}T00:00:00Z`)
      ? null
      : `Must be ${DAY}.`,
  schema: { type: 'string', format: 'date' },
};

export const yesOrNo: ValueRule = {
  expected: 'true or false',
  faultOf: (value) => (typeof value === 'boolean' ? null : 'Must be true or false.'),
  schema: { type: 'boolean' },
};

/** One of a few words; a slip gets the nearest one suggested. */
export function oneOf(words: readonly string[], expected = `one of ${words.join(', ')}`): ValueRule {
  return { expected, faultOf: wordFault(words, expected), schema: { enum: words } };
}

export const ternary = oneOf(['yes', 'no', 'unknown']);

/** A number between two bounds, both included. */
export function number(low: number, high: number, of = 'a number'): ValueRule {
  const expected = `${of} from ${low} to ${high}`;
  const schema = { type: 'number', minimum: low, maximum: high };
  return { expected, faultOf: numberFault(low, high, expected), schema };
}

export const count: ValueRule = {
  expected: 'a whole number, 0 or more',
  faultOf: (value) =>
    Number.isInteger(value) && Number(value) >= 0 && Number(value) <= 100_000
      ? null
      : 'Must be a whole number from 0 to 100000.',
  schema: { type: 'integer', minimum: 0, maximum: 100_000 },
};

const hours = number(0, 1_000_000, 'a number of hours');
export const hoursOrUnknown: ValueRule = {
  expected: `${hours.expected}, or unknown`,
  faultOf: (value) => (value === 'unknown' ? null : hours.faultOf(value)),
  schema: { oneOf: [{ const: 'unknown' }, hours.schema] },
};

/** A list of values of one rule, none of them twice. */
export function listOf(rule: ValueRule, what: string): ValueRule {
  const expected = `a list of at most ${LONGEST_LIST} ${what}, none of them twice`;
  const schema: JsonSchema = {
    type: 'array',
    items: rule.schema,
    uniqueItems: true,
    maxItems: LONGEST_LIST,
  };
  return {
    expected,
    itemFault: rule.faultOf,
    faultOf: (value) =>
      Array.isArray(value) && value.length <= LONGEST_LIST && new Set(value).size === value.length
        ? null
        : `Must be ${expected}.`,
    schema,
  };
}

export const lines = listOf(line, 'texts');
export const ids = listOf(id, 'ids');
export const treatments = listOf(
  oneOf(treatmentSlugs, 'the name of a treatment in the vocabulary'),
  'treatments',
);
export const casualtyTypes = listOf(
  oneOf(casualtyTypeSlugs, 'a casualty type of the vocabulary'),
  'casualty types, first event first',
);

function ruleOf(expected: string, faultOf: FaultOf, schema: JsonSchema): ValueRule {
  return { expected, faultOf, schema };
}

export const stateCode = ruleOf('a state code, such as TX', stateCodeFault, {
  type: 'string',
  pattern: '^[A-Z]{2}$',
  examples: ['TX', 'OK'],
});
export const states = listOf(stateCode, 'state codes');
export const timeZone = ruleOf(
  'the IANA name of a time zone',
  (value) =>
    typeof value === 'string' && isTimeZone(value)
      ? null
      : 'Must be the IANA name of a time zone, such as America/Chicago.',
  { type: 'string', examples: ['America/Chicago'] },
);
