import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toCents } from '../../shared/quantity/cents.js';
import { dollarsFault } from '../../shared/wire/check-dollars.js';
import { isTimeZone } from '../../shared/wire/check-time-zone.js';
import { suggestWord } from '../../shared/wire/suggest-word.js';

const MOST_CENTS = 100_000_000_000;

describe('dollars', () => {
  it('every whole number of cents up to a billion dollars is accepted and comes back as those cents', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: MOST_CENTS }), (cents) => {
        const amount = Number(`${Math.floor(cents / 100)}.${String(cents % 100).padStart(2, '0')}`);
        expect(dollarsFault(amount)).toBeNull();
        expect(toCents(amount)).toBe(cents);
      }),
    );
  });

  it('every amount with a third decimal is refused', () => {
    const mills = fc.integer({ min: 0, max: MOST_CENTS * 10 - 1 }).filter((n) => n % 10 !== 0);
    fc.assert(
      fc.property(mills, (n) => {
        const amount = Number(`${Math.floor(n / 1000)}.${String(n % 1000).padStart(3, '0')}`);
        expect(dollarsFault(amount)).toMatch(/two decimals/);
      }),
    );
  });

  it.each([
    [0.07, null],
    [-0, null],
    [1e9, null],
    [0.1 + 0.2, /two decimals/],
    [2000.001, /two decimals/],
    [5e-324, /two decimals/],
    [1e9 + 0.01, /at most 1000000000/],
    [-0.01, /0 or more/],
    [Number.NaN, /as a number/],
    [Number.POSITIVE_INFINITY, /as a number/],
    ['12', /as a number/],
    [null, /as a number/],
  ])('%s', (value, fault) => {
    if (fault === null) expect(dollarsFault(value)).toBeNull();
    else expect(dollarsFault(value)).toMatch(fault);
  });
});

describe('time zones', () => {
  it('every zone that the engine lists is a zone', () => {
    const zones = Intl.supportedValuesOf('timeZone');
    expect(zones.length).toBeGreaterThan(300);
    expect(zones.filter((zone) => !isTimeZone(zone))).toEqual([]);
  });

  it.each([
    'America/Chicago',
    'america/chicago',
    'US/Central',
    'UTC',
    'GMT',
    'Etc/GMT+6',
    'America/Puerto_Rico',
  ])('%s is one, however often it is asked', (zone) => {
    expect([isTimeZone(zone), isTimeZone(zone)]).toEqual([true, true]);
  });

  // CST to BST: names that the ICU library knows and the IANA database does not (from memory).
  it.each([
    'CST',
    'PST',
    'IST',
    'bst',
    'SystemV/CST6CDT',
    '+05:00',
    '-0500',
    '-05',
    'Z',
    'America/Nowhere',
    'America',
  ])('%s is none', (zone) => {
    expect([isTimeZone(zone), isTimeZone(zone)]).toEqual([false, false]);
  });

  it.each(['', ' UTC', 'America/Chicago ', 'America/Chicago\0', 'constructor', '__proto__', '../UTC'])(
    '%j is none',
    (zone) => {
      expect(isTimeZone(zone)).toBe(false);
    },
  );
});

describe('the nearest word', () => {
  const words = ['grounding', 'sinking', 'fall-overboard', 'fall-in-vessel', 'other'];
  it.each([
    ['groundign', 'grounding'],
    ['Grounding', 'grounding'],
    ['FALL_OVERBOARD', 'fall-overboard'],
    ['fall in the vessel', 'fall-in-vessel'],
    ['x', null],
    ['', null],
    ['hurricane', null],
    ['g'.repeat(100_000), null],
  ])('to %j', (typed, nearest) => {
    expect(suggestWord(typed, words)).toBe(nearest);
  });
});
