import type { DamageItem } from '../record/incident-facts.js';
import { toCents } from '../quantity/cents.js';
import type { Occurrence } from './read-occurrence.js';
import type { RulePack } from './rule-pack.js';

/** One damage item as an interval in cents; `high` is infinite while the amount is unknown. */
export interface DamageReading {
  readonly index: number;
  readonly item: DamageItem;
  readonly low: number;
  readonly high: number;
  /** Whether it counts under the pack at hand; `open` where the law read does not say. */
  readonly counts: 'yes' | 'open';
}

/** From 1 January 2024 personal property is out of the federal total: CG-BSX Policy Letter 23-01 CH-1. */
const PERSONAL_PROPERTY_OUT_FROM = '2024-01-01';

/** The items that count, or may count, under a pack. */
export function readDamage(
  occurrence: Occurrence,
  personalProperty: RulePack['personalProperty'],
): DamageReading[] {
  const personal = personalPropertyCounts(personalProperty, occurrence.localDate);
  const readings: DamageReading[] = [];
  occurrence.facts.damage.forEach((item, index) => {
    const counts = item.of === 'personal-property' ? personal : 'yes';
    if (counts !== 'no') readings.push({ index, item, counts, ...interval(item.amount) });
  });
  return readings;
}

function personalPropertyCounts(
  rule: RulePack['personalProperty'],
  localDate: string,
): 'yes' | 'no' | 'open' {
  switch (rule) {
    case 'counts':
      return 'yes';
    case 'excluded':
      return 'no';
    case 'excluded-from-2024':
      return localDate >= PERSONAL_PROPERTY_OUT_FROM ? 'no' : 'yes';
    case 'unknown':
      return 'open';
  }
}

function interval(amount: DamageItem['amount']): { low: number; high: number } {
  if (amount === 'unknown') return { low: 0, high: Infinity };
  if (typeof amount === 'number') return { low: toCents(amount), high: toCents(amount) };
  return { low: toCents(amount.low), high: toCents(amount.high) };
}
