import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { wallClock } from '../../src/server/register/wall-clock.js';

describe('the clock on the wall', () => {
  it.each([
    ['2026-06-13T16:20:00Z', 'America/Chicago', '2026-06-13T11:20:00.000Z'],
    // From the second Sunday of March to the first of November: 15 U.S.C. 260a, from memory.
    ['2026-03-08T07:59:59Z', 'America/Chicago', '2026-03-08T01:59:59.000Z'],
    ['2026-03-08T08:00:00Z', 'America/Chicago', '2026-03-08T03:00:00.000Z'],
    ['2026-11-01T06:30:00Z', 'America/Chicago', '2026-11-01T01:30:00.000Z'],
    ['2026-11-01T07:30:00Z', 'America/Chicago', '2026-11-01T01:30:00.000Z'],
    ['2026-01-01T05:00:00Z', 'America/Chicago', '2025-12-31T23:00:00.000Z'],
  ])('at %s in %s shows %s', (instant, zone, shown) => {
    expect(wallClock(instant, zone).toISOString()).toBe(shown);
  });

  it('shows what the Temporal API shows, at any second in any of these zones', () => {
    const zones = fc.constantFrom('America/Chicago', 'America/Phoenix', 'Pacific/Honolulu', 'UTC');
    const instants = fc.date({
      min: new Date('1990-01-01'),
      max: new Date('2060-01-01'),
      noInvalidDate: true,
    });
    fc.assert(
      fc.property(instants, zones, (date, zone) => {
        const instant = `${date.toISOString().slice(0, 19)}Z`;
        const expected = Temporal.Instant.from(instant).toZonedDateTimeISO(zone).toPlainDateTime().toString();
        expect(wallClock(instant, zone).toISOString().slice(0, 19)).toBe(expected.slice(0, 19));
      }),
    );
  });
});
