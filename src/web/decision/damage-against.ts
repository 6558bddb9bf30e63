import type { Determination } from '../../../shared/determination/determination.js';
import { readDamage } from '../../../shared/law/read-damage.js';
import { readOccurrence } from '../../../shared/law/read-occurrence.js';
import type { AmountReading, DamageTest, RulePack } from '../../../shared/law/rule-pack.js';
import { rangeDamage } from '../../../shared/law/test-damage.js';
import { toCents } from '../../../shared/quantity/cents.js';
import type { IncidentFacts } from '../../../shared/record/incident-facts.js';
import { zoneClock } from '../../../shared/time/zone-clock.js';

/** The damage as one rule counts it, beside the amounts that the rule names. All in cents. */
export interface DamageAgainst {
  readonly jurisdiction: string;
  readonly test: DamageTest;
  readonly low: number;
  /** Infinite while no upper figure is known. */
  readonly high: number;
  /** The one that decides first, and others that sources name. */
  readonly amounts: readonly (AmountReading & { readonly cents: number })[];
}

const AMOUNT_TESTS: readonly string[] = ['damage-total', 'damage-one-person', 'damage-one-item'];

/**
 * The damage against the amounts of each law whose report stands among the duties.
 * @example damageAgainst(facts, determination, packs)[0] // { jurisdiction: 'us-tx', test: 'damage-total', low: 90000, high: 260000, amounts: [{ amountUsd: 2000, … }] }
 */
export function damageAgainst(
  facts: IncidentFacts,
  { duties, timeZone }: Determination,
  packOf: (jurisdiction: string) => RulePack | undefined,
): DamageAgainst[] {
  const occurrence = readOccurrence(facts, zoneClock(timeZone));
  return [...new Set(duties.map(({ jurisdiction }) => jurisdiction))].flatMap((jurisdiction) => {
    const pack = packOf(jurisdiction);
    if (pack === undefined || pack.report === null) return [];
    const damage = {
      items: readDamage(occurrence, pack.personalProperty),
      complete: facts.damageAssessment === 'complete',
    };
    return pack.report.triggers
      .filter(({ test }) => AMOUNT_TESTS.includes(test))
      .map(({ test, readings = [] }) => ({
        jurisdiction,
        test: test as DamageTest,
        ...rangeDamage(test as DamageTest, damage),
        amounts: readings
          .filter(({ basis }) => basis !== 'superseded')
          .map((reading) => ({ ...reading, cents: toCents(reading.amountUsd) })),
      }));
  });
}

/** Whether the range reaches an amount: `yes` when its low end does, `no` when its high end does not. */
export function reaches(
  { low, high }: { low: number; high: number },
  reading: AmountReading,
): 'yes' | 'no' | 'unknown' {
  const need = toCents(reading.amountUsd) + (reading.comparison === 'at-least' ? 0 : 1);
  if (low >= need) return 'yes';
  return high < need ? 'no' : 'unknown';
}
