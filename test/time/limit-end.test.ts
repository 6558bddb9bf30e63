import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limitEnd, type Period } from '../../shared/time/limit-end.js';
import { plusHours, zoneClock } from '../../shared/time/zone-clock.js';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const days = (count: number): Period => ({ days: count, dayKind: 'plain' });
const business = (count: number): Period => ({ days: count, dayKind: 'business' });

function end(start: string, zone: string, period: Period, holidays: readonly string[] = []): string {
  const clock = zoneClock(zone);
  return clock.format(limitEnd(Date.parse(start), period, clock, holidays));
}

// The zones' changes of clocks are those of the tz database: 10 March and 3 November 2024, 8 March and
// 1 November 2026 in the United States (15 U.S.C. 260a); Phoenix has none.
describe('elapsed hours and ten plain days over a change of clocks', () => {
  it.each([
    [
      '2024-07-04T14:10:00-04:00',
      'America/New_York',
      '2024-07-05T14:10:00-04:00',
      '2024-07-06T14:10:00-04:00',
      '2024-07-14T14:10:00-04:00',
    ],
    [
      '2024-11-02T14:00:00-04:00',
      'America/New_York',
      '2024-11-03T13:00:00-05:00',
      '2024-11-04T13:00:00-05:00',
      '2024-11-12T13:00:00-05:00',
    ],
    [
      '2024-03-09T14:00:00-05:00',
      'America/New_York',
      '2024-03-10T15:00:00-04:00',
      '2024-03-11T15:00:00-04:00',
      '2024-03-19T15:00:00-04:00',
    ],
    [
      '2024-07-04T14:10:00-07:00',
      'America/Phoenix',
      '2024-07-05T14:10:00-07:00',
      '2024-07-06T14:10:00-07:00',
      '2024-07-14T14:10:00-07:00',
    ],
    [
      '2024-11-02T23:30:00-05:00',
      'America/Chicago',
      '2024-11-03T22:30:00-06:00',
      '2024-11-04T22:30:00-06:00',
      '2024-11-12T22:30:00-06:00',
    ],
  ])('24, 48 and 240 hours from %s in %s', (start, zone, after24, after48, after240) => {
    expect(end(start, zone, { hours: 24 })).toBe(after24);
    expect(end(start, zone, { hours: 48 })).toBe(after48);
    expect(end(start, zone, { hours: 240 })).toBe(after240);
  });

  it.each([
    ['no change', '2024-07-04T14:10:00-04:00', 'America/New_York', '2024-07-14T14:10:00-04:00'],
    [
      'autumn: elapsed comes first',
      '2024-11-02T14:00:00-04:00',
      'America/New_York',
      '2024-11-12T13:00:00-05:00',
    ],
    [
      'spring: the wall clock comes first',
      '2024-03-09T14:00:00-05:00',
      'America/New_York',
      '2024-03-19T14:00:00-04:00',
    ],
    ['autumn, near midnight', '2024-11-02T23:30:00-05:00', 'America/Chicago', '2024-11-12T22:30:00-06:00'],
    [
      'to a time that does not exist',
      '2026-02-26T02:30:00-06:00',
      'America/Chicago',
      '2026-03-08T01:30:00-06:00',
    ],
    [
      'to a time that comes twice',
      '2026-10-22T01:30:00-05:00',
      'America/Chicago',
      '2026-11-01T01:30:00-05:00',
    ],
    [
      'from the second of two equal times',
      '2026-11-01T01:30:00-06:00',
      'America/Chicago',
      '2026-11-11T01:30:00-06:00',
    ],
    ['over a leap day', '2024-02-25T10:00:00-05:00', 'America/New_York', '2024-03-06T10:00:00-05:00'],
    ['over New Year', '2025-12-27T10:00:00-05:00', 'America/New_York', '2026-01-06T10:00:00-05:00'],
    ['in a fixed offset', '2024-11-02T14:00:00-04:00', '-04:00', '2024-11-12T14:00:00-04:00'],
    [
      'where clocks never change',
      '2024-03-09T14:00:00-10:00',
      'Pacific/Honolulu',
      '2024-03-19T14:00:00-10:00',
    ],
  ])('ten days, %s', (_, start, zone, expected) => {
    expect(end(start, zone, days(10))).toBe(expected);
  });
});

describe('business days', () => {
  it.each([
    ['one from a Friday', '2026-06-12T09:00:00-05:00', 1, '2026-06-15T09:00:00-05:00'],
    ['one from a Saturday', '2026-06-13T11:20:00-05:00', 1, '2026-06-15T11:20:00-05:00'],
    ['one from a Sunday', '2026-06-14T11:20:00-05:00', 1, '2026-06-15T11:20:00-05:00'],
    ['one from a Monday', '2026-06-15T11:20:00-05:00', 1, '2026-06-16T11:20:00-05:00'],
    ['five from a Monday', '2026-06-15T11:20:00-05:00', 5, '2026-06-22T11:20:00-05:00'],
    ['ten over New Year, which nobody named', '2026-12-28T11:20:00-06:00', 10, '2027-01-11T11:20:00-06:00'],
    [
      'ten over the autumn change, at the same time of day',
      '2026-10-26T14:00:00-05:00',
      10,
      '2026-11-09T14:00:00-06:00',
    ],
    [
      'ten over the spring change, at the same time of day',
      '2026-03-02T14:00:00-06:00',
      10,
      '2026-03-16T14:00:00-05:00',
    ],
  ])('%s', (_, start, count, expected) => {
    expect(end(start, 'America/Chicago', business(count))).toBe(expected);
  });

  it.each([
    ['a named weekday is skipped', ['2027-01-01'], '2027-01-12T11:20:00-06:00'],
    ['a named Saturday changes nothing', ['2027-01-02'], '2027-01-11T11:20:00-06:00'],
    ['the day it started changes nothing', ['2026-12-28'], '2027-01-11T11:20:00-06:00'],
    ['two in a row', ['2026-12-31', '2027-01-01'], '2027-01-13T11:20:00-06:00'],
    ['the last day itself', ['2027-01-11'], '2027-01-12T11:20:00-06:00'],
  ])('%s', (_, holidays, expected) => {
    expect(end('2026-12-28T11:20:00-06:00', 'America/Chicago', business(10), holidays)).toBe(expected);
  });
});

it('ends what is due at once when it starts', () => {
  expect(end('2026-06-13T11:20:00-05:00', 'America/Chicago', { immediate: true })).toBe(
    '2026-06-13T11:20:00-05:00',
  );
});

describe('for any start, length and zone', () => {
  const zones = fc.constantFrom(
    'America/New_York',
    'America/Chicago',
    'America/Denver',
    'America/Phoenix',
    'America/Los_Angeles',
    'America/Anchorage',
    'America/Adak',
    'Pacific/Honolulu',
    'America/Puerto_Rico',
    'Pacific/Guam',
    '-05:00',
  );
  const minutes = fc.integer({ min: Date.UTC(2012, 0) / 60_000, max: Date.UTC(2040, 0) / 60_000 });
  const starts = minutes.map((minute) => minute * 60_000);
  const lengths = fc.integer({ min: 1, max: 60 });

  it('hours are elapsed', () => {
    fc.assert(
      fc.property(starts, lengths, zones, (start, hours, zone) => {
        expect(limitEnd(start, { hours }, zoneClock(zone))).toBe(start + hours * HOUR);
        expect(plusHours(start, hours)).toBe(start + hours * HOUR);
      }),
    );
  });

  it('plain days never end after either reading, and within two hours of both', () => {
    fc.assert(
      fc.property(starts, lengths, zones, (start, count, zone) => {
        const clock = zoneClock(zone);
        const found = limitEnd(start, days(count), clock);
        const readings = [start + count * DAY, clock.plusCalendarDays(start, count)];
        expect(readings).toContain(found);
        for (const reading of readings) {
          expect(found).toBeLessThanOrEqual(reading);
          expect(reading - found).toBeLessThanOrEqual(2 * HOUR);
        }
      }),
    );
  });

  it('a longer limit ends later', () => {
    fc.assert(
      fc.property(starts, lengths, zones, (start, count, zone) => {
        const clock = zoneClock(zone);
        expect(limitEnd(start, days(count + 1), clock)).toBeGreaterThan(limitEnd(start, days(count), clock));
        expect(limitEnd(start, business(count + 1), clock)).toBeGreaterThan(
          limitEnd(start, business(count), clock),
        );
      }),
    );
  });

  it('business days end on a working day, with as many working days passed as the law says', () => {
    fc.assert(
      fc.property(starts, lengths, zones, (start, count, zone) => {
        const clock = zoneClock(zone);
        const last = clock.localDate(limitEnd(start, business(count), clock));
        const passed = [...datesAfter(clock.localDate(start), last)].filter(isWorkingDay);
        expect(isWorkingDay(last)).toBe(true);
        expect(passed).toHaveLength(count);
      }),
    );
  });

  it('a named holiday never brings the end forward', () => {
    const holidays = fc.array(fc.integer({ min: 0, max: 90 }), { maxLength: 5 });
    fc.assert(
      fc.property(starts, lengths, zones, holidays, (start, count, zone, offsets) => {
        const clock = zoneClock(zone);
        const named = offsets.map((offset) => clock.localDate(start + offset * DAY));
        const found = limitEnd(start, business(count), clock, named);
        expect(found).toBeGreaterThanOrEqual(limitEnd(start, business(count), clock));
        expect(named).not.toContain(clock.localDate(found));
      }),
    );
  });
});

/** Dates as texts, counted in UTC and by no calendar of the code under test: after `from`, up to `to`. */
function* datesAfter(from: string, to: string): Generator<string> {
  for (let at = Date.parse(`${from}T00:00:00Z`) + DAY; at <= Date.parse(`${to}T00:00:00Z`); at += DAY) {
    yield new Date(at).toISOString().slice(0, 10);
  }
}

function isWorkingDay(date: string): boolean {
  const day = new Date(`${date}T00:00:00Z`).getUTCDay();
  return day !== 0 && day !== 6;
}
