import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readInstant } from '../../shared/time/read-instant.js';
import { zoneClock } from '../../shared/time/zone-clock.js';

const at = Date.parse;

describe('an instant in its zone', () => {
  it.each([
    ['America/Chicago', '2026-06-13T16:20:00Z', '2026-06-13T11:20:00-05:00'],
    ['America/Chicago', '2026-12-13T16:20:00Z', '2026-12-13T10:20:00-06:00'],
    ['America/Phoenix', '2026-06-13T16:20:00Z', '2026-06-13T09:20:00-07:00'],
    ['Pacific/Honolulu', '2026-06-13T05:00:00Z', '2026-06-12T19:00:00-10:00'],
    ['Pacific/Guam', '2026-06-13T16:20:00Z', '2026-06-14T02:20:00+10:00'],
    ['-05:00', '2026-12-13T16:20:00Z', '2026-12-13T11:20:00-05:00'],
    ['+00:00', '2026-06-13T16:20:00Z', '2026-06-13T16:20:00+00:00'],
    // The two instants of one wall-clock time, an hour apart (tz database, 1 November 2026).
    ['America/Chicago', '2026-11-01T06:30:00Z', '2026-11-01T01:30:00-05:00'],
    ['America/Chicago', '2026-11-01T07:30:00Z', '2026-11-01T01:30:00-06:00'],
    // The hour that does not exist (8 March 2026).
    ['America/Chicago', '2026-03-08T07:59:59Z', '2026-03-08T01:59:59-06:00'],
    ['America/Chicago', '2026-03-08T08:00:00Z', '2026-03-08T03:00:00-05:00'],
    ['America/Chicago', '2026-06-13T16:20:00.25Z', '2026-06-13T11:20:00.250-05:00'],
  ])('in %s, %s is %s', (zone, instant, expected) => {
    expect(zoneClock(zone).format(at(instant))).toBe(expected);
  });

  it.each([
    ['America/Chicago', '2026-06-13T04:59:59Z', '2026-06-12'],
    ['America/Chicago', '2026-06-13T05:00:00Z', '2026-06-13'],
    ['America/Chicago', '2024-01-01T05:59:59Z', '2023-12-31'],
    ['America/Chicago', '2024-01-01T06:00:00Z', '2024-01-01'],
    ['Pacific/Guam', '2026-06-12T14:00:00Z', '2026-06-13'],
    ['-05:00', '2024-01-01T04:59:59Z', '2023-12-31'],
  ])('in %s, %s is on %s', (zone, instant, expected) => {
    expect(zoneClock(zone).localDate(at(instant))).toBe(expected);
  });

  it.each([
    ['America/Chicago', '2026-06-13T11:20:00-05:00', '2026-06-14T00:00:00-05:00'],
    ['America/Chicago', '2026-06-13T23:59:59-05:00', '2026-06-14T00:00:00-05:00'],
    ['America/Chicago', '2026-06-13T00:00:00-05:00', '2026-06-14T00:00:00-05:00'],
    ['America/Chicago', '2026-03-08T00:30:00-06:00', '2026-03-09T00:00:00-05:00'],
    ['America/Chicago', '2026-11-01T00:30:00-05:00', '2026-11-02T00:00:00-06:00'],
    // Santiago's clocks go forward at midnight: the day begins at one (tz database, 6 September 2026).
    ['America/Santiago', '2026-09-05T12:00:00-04:00', '2026-09-06T01:00:00-03:00'],
  ])('in %s, the midnight after %s is %s', (zone, instant, expected) => {
    const clock = zoneClock(zone);
    expect(clock.format(clock.nextMidnight(at(instant)))).toBe(expected);
  });

  it.each([
    ['the same time of day', '2026-06-13T11:20:00-05:00', 10, '2026-06-23T11:20:00-05:00'],
    ['across the spring change', '2026-03-07T11:20:00-06:00', 1, '2026-03-08T11:20:00-05:00'],
    ['to the last moment before a gap', '2026-03-07T01:59:59-06:00', 1, '2026-03-08T01:59:59-06:00'],
    ['into the gap: the earlier instant', '2026-03-07T02:30:00-06:00', 1, '2026-03-08T01:30:00-06:00'],
    ['past the gap', '2026-03-07T03:00:00-06:00', 1, '2026-03-08T03:00:00-05:00'],
    ['to a time that comes twice: the earlier', '2026-10-31T01:30:00-05:00', 1, '2026-11-01T01:30:00-05:00'],
    ['from the later of two equal times', '2026-11-01T01:30:00-06:00', 1, '2026-11-02T01:30:00-06:00'],
    ['over the end of a month', '2026-01-31T11:20:00-06:00', 30, '2026-03-02T11:20:00-06:00'],
  ])('calendar days: %s', (_, start, days, expected) => {
    const clock = zoneClock('America/Chicago');
    expect(clock.format(clock.plusCalendarDays(at(start), days))).toBe(expected);
  });

  it('names its zone', () => {
    expect(zoneClock('America/Chicago').zone).toBe('America/Chicago');
    expect(zoneClock('-05:00').zone).toBe('-05:00');
  });

  it.each(['Mars/Olympus', '', 'nowhere', '+25:00'])('refuses %j', (zone) => {
    expect(() => zoneClock(zone)).toThrow(RangeError);
  });
});

describe('for any instant', () => {
  const zones = fc.constantFrom(
    'America/New_York',
    'America/Adak',
    'Pacific/Guam',
    'America/Phoenix',
    '+05:30',
  );
  const instants = fc.integer({ min: Date.UTC(1990, 0), max: Date.UTC(2050, 0) });

  it('what is written is read back', () => {
    fc.assert(
      fc.property(instants, zones, (instant, zone) => {
        expect(readInstant(zoneClock(zone).format(instant))).toBe(instant);
      }),
    );
  });

  it('the date and the offset are those of the writing', () => {
    fc.assert(
      fc.property(instants, zones, (instant, zone) => {
        const clock = zoneClock(zone);
        expect(clock.format(instant).startsWith(`${clock.localDate(instant)}T`)).toBe(true);
      }),
    );
  });

  it('the next midnight is later, begins the next date and is at most 25 hours away', () => {
    fc.assert(
      fc.property(instants, zones, (instant, zone) => {
        const clock = zoneClock(zone);
        const midnight = clock.nextMidnight(instant);
        expect(midnight).toBeGreaterThan(instant);
        expect(midnight - instant).toBeLessThanOrEqual(25 * 3_600_000);
        expect(clock.localDate(midnight - 1)).toBe(clock.localDate(instant));
        expect(clock.localDate(midnight) > clock.localDate(instant)).toBe(true);
      }),
    );
  });

  it('a clock gives the same answer when it is asked again', () => {
    fc.assert(
      fc.property(instants, zones, (instant, zone) => {
        const clock = zoneClock(zone);
        const first = [clock.format(instant), clock.localDate(instant), clock.nextMidnight(instant)];
        const again = [clock.format(instant), clock.localDate(instant), clock.nextMidnight(instant)];
        expect(again).toEqual(first);
      }),
    );
  });
});
