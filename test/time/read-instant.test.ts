import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readInstant } from '../../shared/time/read-instant.js';

describe('an instant is read to the millisecond', () => {
  it.each([
    ['1970-01-01T00:00:00Z', 0],
    ['1970-01-01T00:00:00+00:00', 0],
    ['1970-01-01T00:00:00-00:00', 0],
    ['1970-01-02T00:00:00Z', 86_400_000],
    ['1969-12-31T23:59:59Z', -1000],
    ['1970-01-01T01:00:00+01:00', 0],
    ['1969-12-31T18:30:00-05:30', 0],
    ['1970-01-01T00:00:00.5Z', 500],
    ['1970-01-01T00:00:00.250Z', 250],
    ['1970-01-01T00:00:00.000999Z', 0],
    ['1970-01-01T00:00:00.123456789Z', 123],
  ])('%s', (text, expected) => {
    expect(readInstant(text)).toBe(expected);
  });

  // RFC 3339 section 5.6 allows lower-case t and z, section 5.7 a leap second; both examples are of section 5.8.
  it.each([
    ['1985-04-12t23:20:50.52z', '1985-04-12T23:20:50.520Z'],
    ['1996-12-19T16:39:57-08:00', '1996-12-20T00:39:57.000Z'],
    ['1937-01-01T12:00:27.87+00:20', '1937-01-01T11:40:27.870Z'],
    // A leap second is read as the second before it: never later than it was.
    ['1990-12-31T23:59:60Z', '1990-12-31T23:59:59.000Z'],
    ['1990-12-31T15:59:60-08:00', '1990-12-31T23:59:59.000Z'],
  ])('%s, after RFC 3339', (text, expected) => {
    expect(new Date(readInstant(text)).toISOString()).toBe(expected);
  });

  it('reads back what it is told in any offset', () => {
    const minutes = fc.integer({ min: -14 * 60, max: 14 * 60 });
    const instants = fc.integer({ min: Date.UTC(1980, 0), max: Date.UTC(2080, 0) });
    fc.assert(
      fc.property(instants, minutes, (instant, offset) => {
        expect(readInstant(written(instant, offset))).toBe(instant);
      }),
    );
  });
});

/** The wall clock of an offset, written out digit by digit. */
function written(instant: number, offsetMinutes: number): string {
  const wall = new Date(instant + offsetMinutes * 60_000).toISOString().slice(0, -1);
  const size = Math.abs(offsetMinutes);
  const [hours, minutes] = [Math.floor(size / 60), size % 60].map((part) => String(part).padStart(2, '0'));
  return `${wall}${offsetMinutes < 0 ? '-' : '+'}${hours}:${minutes}`;
}
