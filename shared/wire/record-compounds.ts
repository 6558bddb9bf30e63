import type { Known } from '../call/known.js';
import { HOW_KNOWN, type HowKnown } from '../call/known.js';
import { STAMP_WAYS, type Stamp } from '../call/stamp.js';
import type { FieldError } from '../kernel/field-error.js';
import { PRECISIONS, type Occurred, type Position } from '../record/time-and-place.js';
import { readInstant } from '../time/read-instant.js';
import { isDateTime } from './check-date-time.js';
import { dollarsFault } from './check-dollars.js';
import { AmountRangeDto } from './damage-item.dto.js';
import { isObject } from './is-object.js';
import { Needed, Value, type Shape, type ValueRule } from './record-members.js';
import { instant, line, number, oneOf } from './record-values.js';

/** How a fact is known; its value is looked at by the rule of the fact. */
export class KnownDto implements Omit<Known<unknown>, 'value'> {
  @Needed({ expected: 'a value', faultOf: () => null, schema: {} })
  value: unknown;

  @Needed(oneOf(HOW_KNOWN))
  known: HowKnown;

  @Value(line)
  by?: string;

  @Value(instant)
  learnedAt?: string;
}

const A_YEAR_S = 31_622_400;

export class StampDto implements Stamp {
  @Needed(instant)
  at: string;

  @Needed(oneOf(STAMP_WAYS))
  how: Stamp['how'];

  @Value(number(-A_YEAR_S, A_YEAR_S, 'a number of seconds'))
  phoneOffsetS?: number;

  @Value(instant)
  theirs?: string;
}

class OccurredDto implements Occurred {
  @Needed(instant)
  at: string;

  @Value(instant)
  until?: string;

  @Needed(oneOf(PRECISIONS))
  precision: Occurred['precision'];

  @Value(number(0, 100_000, 'a number of minutes'))
  withinMinutes?: number;
}

class PositionDto implements Position {
  @Needed(number(-90, 90, 'degrees, north positive (WGS 84),'))
  latitude: number;

  @Needed(number(-180, 180, 'degrees, east positive (WGS 84),'))
  longitude: number;

  @Value(number(0, 1_000_000, 'a number of metres'))
  accuracyM?: number;

  @Value(line)
  asSaid?: string;
}

function objectRule(expected: string, part: () => Shape, relation?: ValueRule['relation']): ValueRule {
  return {
    expected,
    faultOf: (value) => (isObject(value) ? null : `Must be ${expected}.`),
    schema: {},
    part,
    ...(relation === undefined ? {} : { relation }),
  };
}

export const stamp = objectRule('a time: {"at", "how": pressed or entered}', () => StampDto);
export const position = objectRule('a position: {"latitude", "longitude"}', () => PositionDto);
export const occurred = objectRule('a time: {"at", "precision"}', () => OccurredDto, spanFault);

const AMOUNT = 'US dollars as a number, {"low", "high"} or unknown';
export const amount: ValueRule = {
  expected: AMOUNT,
  faultOf: (value) => {
    if (value === 'unknown' || isObject(value)) return null;
    return typeof value === 'number' ? dollarsFault(value) : `Must be ${AMOUNT}.`;
  },
  schema: {
    oneOf: [
      { const: 'unknown' },
      { type: 'number', minimum: 0, description: 'US dollars with at most two decimals.' },
      {
        type: 'object',
        additionalProperties: false,
        required: ['low', 'high'],
        properties: { low: { type: 'number', minimum: 0 }, high: { type: 'number', minimum: 0 } },
      },
    ],
  },
  part: () => AmountRangeDto,
  relation: ({ low, high }) =>
    typeof low === 'number' && typeof high === 'number' && high < low
      ? { pointer: '/high', detail: 'Must not be below low.' }
      : null,
};

function spanFault({ at, until }: Readonly<Record<string, unknown>>): FieldError | null {
  if (typeof at !== 'string' || typeof until !== 'string' || !isDateTime(at) || !isDateTime(until))
    return null;
  return readInstant(until) < readInstant(at)
    ? { pointer: '/until', detail: 'Must not be before at: it is the end of the span.' }
    : null;
}
