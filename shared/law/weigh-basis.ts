import type { PackBasis, ReadingBasis } from './rule-pack.js';

const ORDER: readonly (ReadingBasis | 'not-read')[] = [
  'read-primary',
  'read-agency',
  'read-secondary',
  'memory',
  'superseded',
  'not-read',
];

/** Law before agency before secondary: `isBetterBasis('read-primary', 'read-agency')` is true. */
export function isBetterBasis(one: PackBasis | ReadingBasis, other: PackBasis | ReadingBasis): boolean {
  return ORDER.indexOf(one) < ORDER.indexOf(other);
}

/** The readings that count, the best-based first; a superseded one is shown and does not count. */
export function standingReadings<T extends { basis: ReadingBasis }>(readings: readonly T[]): T[] {
  return readings
    .filter((reading) => reading.basis !== 'superseded')
    .sort((a, b) => ORDER.indexOf(a.basis) - ORDER.indexOf(b.basis));
}
