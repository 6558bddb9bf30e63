import { jsonPointer } from '../kernel/json-pointer.js';
import type { Truth } from '../kernel/truth.js';
import { dollars, toCents } from '../quantity/cents.js';
import { NOTHING_SPECIAL, type OpenPoint, type TestResult } from './finding.js';
import { ATTRIBUTION, groupDamage, type DamageGroup } from './group-damage.js';
import type { DamageReading } from './read-damage.js';
import { nameAmount } from './name-law-terms.js';
import type { AmountReading, DamageTest, Trigger } from './rule-pack.js';
import { standingReadings } from './weigh-basis.js';

/** Damage as one pack counts it. */
export interface DamageFacts {
  readonly items: readonly DamageReading[];
  /** Every damage is listed. */
  readonly complete: boolean;
}

/**
 * A damage test over intervals: true when the low total of some group reaches the amount, false when no
 * high total does. The best-based reading decides when it is true; when it is not and a weaker reading
 * may be, the point is one of law. All amounts are whole cents.
 */
export function testDamage(trigger: Trigger, damage: DamageFacts): TestResult {
  const test = trigger.test as DamageTest;
  const groups = groupDamage(test, damage.items);
  const readings = standingReadings(trigger.readings ?? []);
  const [best = 1, ...weaker] = readings.map(needOf);
  // A weaker reading matters only below the best one: at or above it the best decides anyway.
  const needs = [best, ...weaker.filter((need) => need < best)];
  const lowest = Math.min(...needs);
  const proven = groups.some((group) => lowTotal(group) >= best);
  const possible = !damage.complete || groups.some((group) => highTotal(group) >= lowest);
  const value: Truth = proven ? 'true' : possible ? 'unknown' : 'false';
  const open = proven ? [] : openPoints(test, groups, damage, needs);
  return {
    value,
    text: sentence(trigger, readings, damage),
    holding: proven ? [NOTHING_SPECIAL] : [],
    open: open.map((point) => ({ point, clock: NOTHING_SPECIAL })),
  };
}

/**
 * The range in which the damage lies that a test looks at, in cents, of the group that comes to most; `high` is infinite
 * while an amount is not known or the list is not closed.
 * @example rangeDamage('damage-total', { items: [], complete: false }) // { low: 0, high: Infinity }
 */
export function rangeDamage(test: DamageTest, damage: DamageFacts): { low: number; high: number } {
  const groups = groupDamage(test, damage.items);
  return {
    low: Math.max(0, ...groups.map((group) => lowTotal(group))),
    high: damage.complete ? Math.max(0, ...groups.map((group) => highTotal(group))) : Infinity,
  };
}

/** The smallest number of cents that meets a reading: "more than $2,000" needs 200001. */
function needOf(reading: AmountReading): number {
  const amount = toCents(reading.amountUsd);
  return reading.comparison === 'at-least' ? amount : amount + 1;
}

/** While the law is open on personal property it adds nothing to the low total and all of it to the high one. */
function lowTotal({ sure }: DamageGroup, personal: PersonalProperty = 'personal property is out'): number {
  return sum(counted(sure, personal).map(({ low }) => low));
}

function highTotal(
  { sure, maybe }: DamageGroup,
  personal: PersonalProperty = 'personal property counts',
): number {
  return sum(counted([...sure, ...maybe], personal).map(({ high }) => high));
}

type PersonalProperty = 'personal property counts' | 'personal property is out';

function counted(items: readonly DamageReading[], personal: PersonalProperty): readonly DamageReading[] {
  return personal === 'personal property counts' ? items : items.filter(({ counts }) => counts === 'yes');
}

function openPoints(
  test: DamageTest,
  groups: readonly DamageGroup[],
  damage: DamageFacts,
  needs: readonly number[],
): OpenPoint[] {
  const [best = 1] = needs;
  const points = damage.items.flatMap((item) => amountPoint(item, groups, damage, needs));
  if (test === 'damage-one-person' || test === 'damage-one-item') {
    points.push(...damage.items.flatMap((item) => attributionPoint(test, item, groups, needs)));
  }
  if (!damage.complete) {
    const text = 'Is the damage complete as listed, or is there more?';
    points.push({ fact: '/damageAssessment', text, proves: true, denies: false });
  }
  if (needs.some((need) => groups.some((group) => personalPropertyMatters(group, need)))) {
    const proves = groups.some((group) => lowTotal(group, 'personal property counts') >= best);
    const text = 'Does personal property carried aboard count? The law read does not say.';
    points.push({ fact: null, text, proves, denies: false });
  }
  const lowest = Math.min(...needs);
  if (groups.some((group) => landsBetween(group, lowest, best))) {
    const proves = groups.some((group) => lowTotal(group) >= lowest);
    const text = 'Which amount is in force? The sources read differ.';
    points.push({ fact: null, text, proves, denies: false });
  }
  return points;
}

/** Asked when some completion of the other items leaves this one to decide. */
function amountPoint(
  reading: DamageReading,
  groups: readonly DamageGroup[],
  damage: DamageFacts,
  needs: readonly number[],
): OpenPoint[] {
  if (reading.low === reading.high) return [];
  const mine = groups.filter(({ sure, maybe }) => sure.includes(reading) || maybe.includes(reading));
  const decides = mine.some((group) => needs.some((need) => straddles(group, need, reading.counts)));
  if (!decides) return [];
  const [best = 1] = needs;
  const raised = ({ sure }: DamageGroup): number =>
    sum(sure.filter(({ counts }) => counts === 'yes').map((one) => (one === reading ? one.high : one.low)));
  const lowered = ({ sure, maybe }: DamageGroup): number =>
    sum([...sure, ...maybe].map((one) => (one === reading ? one.low : one.high)));
  return [
    {
      fact: jsonPointer(['damage', reading.index, 'amount']),
      text: `What does the damage to ${itemWords(reading)} come to?`,
      proves: mine.some((group) => raised(group) >= best),
      denies: damage.complete && groups.every((group) => lowered(group) < Math.min(...needs)),
    },
  ];
}

/** Some totals fall short of the need and some reach it, whichever way personal property is counted. */
function straddles(group: DamageGroup, need: number, counts: DamageReading['counts']): boolean {
  const withPersonal = lowTotal(group, 'personal property counts') < need && highTotal(group) >= need;
  if (counts === 'open') return withPersonal;
  const without = lowTotal(group) < need && highTotal(group, 'personal property is out') >= need;
  return withPersonal || without;
}

/** Whose it is matters when adding it to some group could reach the amount. */
function attributionPoint(
  test: keyof typeof ATTRIBUTION,
  reading: DamageReading,
  groups: readonly DamageGroup[],
  needs: readonly number[],
): OpenPoint[] {
  const joined = groups.filter(({ maybe }) => maybe.includes(reading));
  const matters = joined.some((group) =>
    needs.some((need) => highTotal(group) >= need && lowTotal(group) < need),
  );
  if (!matters || reading.high === 0) return [];
  const [best = 1] = needs;
  const owner = test === 'damage-one-person';
  return [
    {
      fact: jsonPointer(['damage', reading.index, ATTRIBUTION[test]]),
      text: owner ? `Whose is ${itemWords(reading)}?` : `To which craft does ${itemWords(reading)} belong?`,
      proves: reading.counts === 'yes' && joined.some((group) => lowTotal(group) + reading.low >= best),
      denies: false,
    },
  ];
}

/** Some total of the other items falls short, and adding the personal property reaches the amount. */
function personalPropertyMatters(group: DamageGroup, need: number): boolean {
  const some = [...group.sure, ...group.maybe].some(({ counts, high }) => counts === 'open' && high > 0);
  return some && lowTotal(group) < need && highTotal(group) >= need;
}

/** Some total reaches a weaker reading's amount and not the best one's. */
function landsBetween(group: DamageGroup, lowest: number, best: number): boolean {
  if (lowest === best) return false;
  const without = lowTotal(group) < best && highTotal(group, 'personal property is out') >= lowest;
  return without || (lowTotal(group, 'personal property counts') < best && highTotal(group) >= lowest);
}

const TEST_WORDS: Record<DamageTest, string> = {
  'damage-total': 'Damage to all property together',
  'damage-one-person': "Damage to any one person's property",
  'damage-one-item': 'Damage to any one vessel or other property',
  'damage-any': 'Damage of any amount',
};

function sentence(
  { test, readings: all = [] }: Trigger,
  readings: readonly AmountReading[],
  damage: DamageFacts,
): string {
  const { low, high } = rangeDamage(test as DamageTest, damage);
  const known = low === high ? dollars(low) : `from ${dollars(low)} to ${dollars(high)}`;
  const superseded = all
    .filter(({ basis }) => basis === 'superseded')
    .map((reading) => `; superseded and not counted: ${amountOf(reading)} (${reading.source})`);
  return `${TEST_WORDS[test as DamageTest]}: ${known} on the facts${readings.map(amountWords).join('')}${superseded.join('')}.`;
}

function amountWords(reading: AmountReading, index: number): string {
  const amount = amountOf(reading);
  return index === 0 ? `; the law asks for ${amount}` : `; another source (${reading.source}) has ${amount}`;
}

function amountOf({ amountUsd, comparison }: AmountReading): string {
  return nameAmount(amountUsd, comparison);
}

function itemWords({ item }: DamageReading): string {
  return `${item.of.replaceAll('-', ' ')} (${item.id})`;
}

function sum(amounts: readonly number[]): number {
  return amounts.reduce((total, amount) => total + amount, 0);
}
