import type { DamageReading } from './read-damage.js';
import type { DamageTest } from './rule-pack.js';

/** Items that a test adds together. */
export interface DamageGroup {
  /** Known to belong together. */
  readonly sure: readonly DamageReading[];
  /** May belong here: whose they are is not known. */
  readonly maybe: readonly DamageReading[];
}

/** The member that says to which group an item belongs, for tests that ask. */
export const ATTRIBUTION = {
  'damage-one-person': 'owner',
  'damage-one-item': 'vessel',
} as const satisfies Partial<Record<DamageTest, string>>;

/**
 * Everything together for a total; for one person's loss by owner; for one item's damage each vessel with
 * its equipment together and every other item alone. An item of unknown owner (or vessel) may belong to
 * every group, and counts in full in each one's high total.
 */
export function groupDamage(test: DamageTest, items: readonly DamageReading[]): DamageGroup[] {
  switch (test) {
    case 'damage-total':
    case 'damage-any':
      return [{ sure: items, maybe: [] }];
    case 'damage-one-person':
      return groupBy(items, ({ item }) => item.owner);
    case 'damage-one-item': {
      const ofVessels = items.filter(({ item }) => item.of === 'vessel' || item.of === 'vessel-equipment');
      const others = items.filter((reading) => !ofVessels.includes(reading));
      return [
        ...groupBy(ofVessels, ({ item }) => item.vessel),
        ...others.map((reading) => ({ sure: [reading], maybe: [] })),
      ];
    }
  }
}

function groupBy(
  items: readonly DamageReading[],
  keyOf: (reading: DamageReading) => string | undefined,
): DamageGroup[] {
  const keys = new Set(items.map(keyOf).filter((key) => key !== undefined));
  const unattributed = items.filter((reading) => keyOf(reading) === undefined);
  const named = [...keys].map((key) => ({
    sure: items.filter((reading) => keyOf(reading) === key),
    maybe: unattributed,
  }));
  // They may all be one more person's, and each alone is somebody's.
  const alone = unattributed.map((reading) => ({
    sure: [reading],
    maybe: unattributed.filter((other) => other !== reading),
  }));
  return [...named, ...alone];
}
