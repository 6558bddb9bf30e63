import { toCents } from '../quantity/cents.js';
import type { Amount, DamageLine } from './damage-section.js';
import { definedMembers } from './defined-members.js';
import type { DamageItem, DamagedThing } from './incident-facts.js';

/** More than any item may come to: no upper bound, said in a figure that the facts accept. */
const NO_BOUND_CENTS = 1_000_000_000_00;

/**
 * A damage line as the determination reads it. A line whose kind nobody has said is taken for property that counts
 * everywhere, and one amount that is missing beside another leaves the sum open above, never below. What is known to
 * have been there at check-out is no damage of this occurrence: it stays listed, and comes to nothing.
 * @example
 * damageToFacts({ id: 'd1', material: known(1500), labour: known(600) }, new Set())
 * // { id: 'd1', of: 'other-property', amount: 2100 }
 */
export function damageToFacts(line: DamageLine, craftIds: ReadonlySet<string>): DamageItem {
  const of = line.of?.value ?? 'other-property';
  const { craft } = line;
  return definedMembers<DamageItem>({
    id: line.id,
    of,
    vessel: craft !== undefined && craftIds.has(craft) ? craft : undefined,
    owner: line.owner,
    basis: line.basis?.value,
    amount: amountOf(line, of),
  });
}

interface Cents {
  readonly low: number;
  readonly high: number;
}

const NOTHING: Cents = { low: 0, high: 0 };
const UNKNOWN: Cents = { low: 0, high: NO_BOUND_CENTS };

function amountOf({ amount, material, labour, newSinceCheckOut }: DamageLine, of: DamagedThing): Amount {
  if (newSinceCheckOut?.value === 'no') return 0;
  if (amount !== undefined) return amount.value;
  if (material === undefined && labour === undefined) return 'unknown';
  const work = centsOf(labour?.value);
  // Federal guidance counts the material cost of restoring infrastructure and is silent on the labour (CG-BSX Policy
  // Letter 23-01 CH-1, as state administrators quote it): whether labour counts there is left open.
  const counted: Cents = of === 'boating-infrastructure' ? { low: 0, high: work.high } : work;
  return amountFrom(add(centsOf(material?.value), counted));
}

function centsOf(amount: Amount | undefined): Cents {
  if (amount === undefined || amount === 'unknown') return UNKNOWN;
  if (typeof amount === 'number') return { low: toCents(amount), high: toCents(amount) };
  return { low: toCents(amount.low), high: toCents(amount.high) };
}

function add(one: Cents, other: Cents): Cents {
  return {
    low: Math.min(one.low + other.low, NO_BOUND_CENTS),
    high: Math.min(one.high + other.high, NO_BOUND_CENTS),
  };
}

function amountFrom({ low, high }: Cents): Amount {
  if (low === NOTHING.low && high === NO_BOUND_CENTS) return 'unknown';
  return low === high ? low / 100 : { low: low / 100, high: high / 100 };
}
