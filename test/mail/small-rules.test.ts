import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newMailId } from '../../src/server/platform/mail/new-mail-id.js';
import { MOST_TRIES, retryDelayMs } from '../../src/server/platform/mail/retry-delay.js';
import { HOUR, MINUTE } from './mail-house.js';

describe('the wait before the next try', () => {
  it.each([
    [1, 0, 15_000],
    [1, 0.5, 22_500],
    [2, 0, 30_000],
    [7, 0, 16 * MINUTE],
    [8, 0, HOUR / 2],
    [30, 0, HOUR / 2],
  ])('after %i tries and chance %f is %i ms', (tries, chance, ms) => {
    expect(retryDelayMs(tries, chance)).toBe(ms);
  });

  it('is never longer than an hour, never shorter than a quarter of a minute', () => {
    const anyTries = fc.integer({ min: 1, max: 2000 });
    fc.assert(
      fc.property(
        anyTries,
        fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
        (tries, chance) => {
          const ms = retryDelayMs(tries, chance);
          expect(ms >= 15_000 && ms <= HOUR).toBe(true);
        },
      ),
    );
  });

  it('makes all tries together last between half a day and a day and a half', () => {
    const total = (chance: number): number =>
      Array.from({ length: MOST_TRIES - 1 }, (_, before) => retryDelayMs(before + 1, chance)).reduce(
        (sum, ms) => sum + ms,
      );
    expect(total(0)).toBeGreaterThan(11 * HOUR);
    expect(total(0.999)).toBeLessThan(36 * HOUR);
  });
});

describe('the id of a mail', () => {
  it('is a UUID of version 7 that tells the time (RFC 9562, 5.7)', () => {
    // The document's own example, appendix A.6: 2022-02-22T19:22:22.000Z is 017f22e2-79b0. The clock never goes back.
    const id = newMailId('2122-02-22T19:22:22.000Z');
    expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(parseInt(id.slice(0, 8) + id.slice(9, 13), 16)).toBe(Date.parse('2122-02-22T19:22:22.000Z'));
  });

  it('stands in the order in which it was made, within a millisecond and when the clock is set back', () => {
    const ids = Array.from({ length: 10_000 }, () => newMailId('2122-02-22T19:22:22.000Z'));
    ids.push(newMailId('2122-02-22T19:22:21.000Z'));
    expect(ids).toEqual([...new Set(ids)].sort());
  });
});
