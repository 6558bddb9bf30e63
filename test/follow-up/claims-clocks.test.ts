import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstWrittenClaim, plusMonths, runClaimsClocks } from '../../shared/follow-up/claims-clocks.js';
import { followUpZone } from '../../shared/follow-up/follow-up-zone.js';
import { zoneClock } from '../../shared/time/zone-clock.js';
import { OPENED, PERIODS, recordOf, saw, writtenDemand } from './situations.js';

const ZONES = ['America/Chicago', 'America/New_York', 'America/Phoenix', 'Pacific/Honolulu'] as const;

// Calendar months, clipped to the end of a shorter month; the changes of clocks are those of the tz database.
describe('six calendar months later', () => {
  it.each([
    ['2026-08-31T12:00:00-05:00', 'America/Chicago', '2027-02-28T12:00:00-06:00'],
    ['2027-08-31T12:00:00-05:00', 'America/Chicago', '2028-02-29T12:00:00-06:00'],
    ['2026-08-30T23:30:00-04:00', 'America/New_York', '2027-02-28T23:30:00-05:00'],
    ['2026-07-04T14:10:00-07:00', 'America/Phoenix', '2027-01-04T14:10:00-07:00'],
    ['2026-03-31T09:00:00-05:00', 'America/Chicago', '2026-09-30T09:00:00-05:00'],
    // 02:30 does not exist in Chicago on 14 March 2027: the earlier instant.
    ['2026-09-14T02:30:00-05:00', 'America/Chicago', '2027-03-14T01:30:00-06:00'],
    // 01:30 comes twice in Chicago on 1 November 2026: the earlier.
    ['2026-05-01T01:30:00-05:00', 'America/Chicago', '2026-11-01T01:30:00-05:00'],
  ])('%s in %s: %s', (start, zone, end) => {
    expect(zoneClock(zone).format(plusMonths(Date.parse(start), 6, zone))).toBe(end);
  });
});

describe('calendar months', () => {
  const instant = fc.date({ min: new Date('2024-01-01'), max: new Date('2040-01-01'), noInvalidDate: true });
  const months = fc.integer({ min: 1, max: 48 });
  const zone = fc.constantFrom(...ZONES);

  it('land on the same day of the month, or on the last of a shorter one', () => {
    fc.assert(
      fc.property(instant, months, zone, (start, count, where) => {
        const clock = zoneClock(where);
        const [year = 0, month = 0, day = 0] = clock.localDate(start.getTime()).split('-').map(Number);
        const endDay = clock.localDate(plusMonths(start.getTime(), count, where));
        const target = new Date(Date.UTC(year, month - 1 + count, 1));
        const length = new Date(Date.UTC(target.getUTCFullYear(), target.getUTCMonth() + 1, 0)).getUTCDate();
        target.setUTCDate(Math.min(day, length));
        expect(endDay).toBe(target.toISOString().slice(0, 10));
      }),
    );
  });

  it('never end sooner for a later start', () => {
    fc.assert(
      fc.property(instant, instant, months, zone, (one, other, count, where) => {
        const [a, b] = [one.getTime(), other.getTime()].sort((x, y) => x - y) as [number, number];
        // An hour that comes twice, or never, may fold the order within itself.
        expect(plusMonths(b, count, where) - plusMonths(a, count, where)).toBeGreaterThanOrEqual(-3_600_000);
      }),
    );
  });
});

describe('the first written notice of a claim (46 U.S.C. 30529)', () => {
  const contacts = (...list: ReturnType<typeof writtenDemand>[]) =>
    recordOf({ contacts: { contacts: list } });
  const JULY_3 = '2026-07-03T10:00:00-05:00';
  const JULY_20 = '2026-07-20T10:00:00-05:00';

  it('is none while nobody has claimed in writing', () => {
    expect(firstWrittenClaim(recordOf({}), null)).toBeNull();
    expect(
      firstWrittenClaim(contacts(writtenDemand(JULY_3, 'no'), writtenDemand(JULY_3, 'unknown')), null),
    ).toBeNull();
  });

  it('is the earliest, in whatever order they were written down', () => {
    const both = contacts(writtenDemand(JULY_20, 'yes', 'k2'), writtenDemand(JULY_3));
    expect(firstWrittenClaim(both, null)).toBe(Date.parse(JULY_3));
  });

  it('is never moved to a later time, and does move to an earlier one', () => {
    expect(firstWrittenClaim(contacts(writtenDemand(JULY_20)), Date.parse(JULY_3))).toBe(Date.parse(JULY_3));
    expect(firstWrittenClaim(recordOf({}), Date.parse(JULY_3))).toBe(Date.parse(JULY_3));
    expect(firstWrittenClaim(contacts(writtenDemand(JULY_3)), Date.parse(JULY_20))).toBe(Date.parse(JULY_3));
  });

  it('counts from when it was learned, or from the opening, where nobody wrote when it came', () => {
    const undated = { id: 'k1', writtenDemand: { ...saw('yes' as const), learnedAt: JULY_3 } };
    expect(firstWrittenClaim(recordOf({ contacts: { contacts: [undated] } }), null)).toBe(Date.parse(JULY_3));
    const bare = { id: 'k1', writtenDemand: saw('yes' as const) };
    expect(firstWrittenClaim(recordOf({ contacts: { contacts: [bare] } }), null)).toBe(Date.parse(OPENED));
  });
});

describe('the zone of the work', () => {
  it.each([
    ['America/Denver', 'America/Denver'],
    ['-05:00', 'America/Chicago'],
    ['+00:00', 'America/Chicago'],
    ['Z', 'America/Chicago'],
    ['UTC', 'America/Chicago'],
    [undefined, 'America/Chicago'],
  ])('of %s is %s', (determined, zone) => {
    expect(followUpZone(determined, 'America/Chicago')).toBe(zone);
  });
});

describe('the clocks of an incident', () => {
  const occurredAt = Date.parse('2026-06-13T11:20:00-05:00');
  const run = (firstClaim: number | null) =>
    runClaimsClocks(PERIODS, { occurredAt, firstClaim, zone: 'America/Chicago' }).map(
      ({ id, startsAt, endsAt }) => [id, startsAt, endsAt],
    );

  it('run three years from the occurrence (46 U.S.C. 30106) and six months from the first claim (30529)', () => {
    expect(run(Date.parse('2026-08-31T12:00:00-05:00'))).toEqual([
      ['limitation-action', '2026-08-31T12:00:00-05:00', '2027-02-28T12:00:00-06:00'],
      ['maritime-tort', '2026-06-13T11:20:00-05:00', '2029-06-13T11:20:00-05:00'],
    ]);
  });

  it('leave the six months unstarted while there is no claim', () => {
    expect(run(null)[0]).toEqual(['limitation-action', null, null]);
  });
});
