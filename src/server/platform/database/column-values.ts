import type { ValueTransformer } from 'typeorm';

/**
 * What a row holds and what the database holds, both ways. A value that does not fit is refused before it is written,
 * on both engines alike: SQLite by itself would store any text in any column. The messages leave the value out, as it
 * may be one that nobody else should read.
 */
function given<In, Out>(
  change: (value: In) => Out,
): (value: In | null | undefined) => Out | null | undefined {
  return (value) => (value === null ? null : value === undefined ? undefined : change(value));
}

const asItIs = <T>(stored: T): T => stored;

const INSTANT = /^\d{4}-\d\d-\d\d[T ]\d\d:\d\d(:\d\d(\.\d+)?)?(Z|[+-]\d\d:\d\d)$/i;

/** RFC 3339 with any offset becomes UTC to the millisecond: `2026-06-13T11:20:00-05:00` is 2026-06-13T16:20:00.000Z. */
export const INSTANT_TEXT: ValueTransformer = {
  to: given((value: string) => {
    const instant = new Date(INSTANT.test(value) ? value : Number.NaN);
    if (Number.isNaN(instant.getTime()))
      throw new TypeError('An instant needs date, time and offset (RFC 3339).');
    return instant.toISOString();
  }),
  from: asItIs,
};

export const DAY_TEXT: ValueTransformer = {
  to: given((value: string) => {
    const midnight = new Date(/^\d{4}-\d\d-\d\d$/.test(value) ? `${value}T00:00:00Z` : Number.NaN);
    // A day that no month has rolls over into the next one.
    if (Number.isNaN(midnight.getTime()) || !midnight.toISOString().startsWith(value)) {
      throw new TypeError('A day is written YYYY-MM-DD and is in the calendar.');
    }
    return value;
  }),
  from: asItIs,
};

const INTEGER_LIMIT = 2 ** 31;

export const WHOLE_NUMBER: ValueTransformer = {
  to: given((value: number) => {
    if (!Number.isInteger(value) || value < -INTEGER_LIMIT || value >= INTEGER_LIMIT) {
      throw new RangeError('A whole number of 32 bits is needed.');
    }
    return value;
  }),
  from: asItIs,
};

export const JSON_TEXT: ValueTransformer = {
  to: given((value: unknown) => JSON.stringify(value)),
  from: given((stored: string): unknown => JSON.parse(stored)),
};
