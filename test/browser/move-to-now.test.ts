import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moveToNow } from '../../src/web/determination/move-to-now.js';

const DAY_MS = 86_400_000;

describe('a sample moved to now', () => {
  it('keeps its layout, its times of day and the days between its instants', () => {
    const text =
      '{\n  "occurredAt": "2026-02-28T23:30:00-05:00",\n  "diedAt": "2026-03-01T00:10:00-05:00"\n}';
    expect(moveToNow(text, Date.parse('2026-11-25T18:00:00Z'))).toBe(
      '{\n  "occurredAt": "2026-11-24T23:30:00-05:00",\n  "diedAt": "2026-11-25T00:10:00-05:00"\n}',
    );
  });

  it('leaves dates alone that are not part of an instant', () => {
    const text = '{"occurredAt":"2026-07-06T14:30:00Z","description":"2026-07-06","id":"2026-07-06 T"}';
    expect(moveToNow(text, Date.parse('2026-07-07T15:00:00Z'))).toBe(
      '{"occurredAt":"2026-07-07T14:30:00Z","description":"2026-07-06","id":"2026-07-06 T"}',
    );
  });

  it('happened within the last day, whenever it is read', () => {
    const instant = fc.date({
      min: new Date('2026-01-01'),
      max: new Date('2040-01-01'),
      noInvalidDate: true,
    });
    fc.assert(
      fc.property(instant, instant, (sample, now) => {
        const moved = moveToNow(JSON.stringify({ occurredAt: sample.toISOString() }), now.getTime());
        const { occurredAt } = JSON.parse(moved) as { occurredAt: string };
        const age = now.getTime() - Date.parse(occurredAt);
        expect(age).toBeGreaterThanOrEqual(0);
        expect(age).toBeLessThan(DAY_MS);
      }),
    );
  });
});
