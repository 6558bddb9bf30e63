import { monthsAfter } from '../time/months-after.js';
import { packCode } from './pack-code.js';
import type { RulePack } from './rule-pack.js';

/** A text of the law that is to be read again. */
export interface DuePack {
  /** Code of the pack. */
  readonly pack: string;
  readonly name: string;
  readonly readOn: string;
  /** ISO date since which it is due. */
  readonly dueOn: string;
  readonly basis: RulePack['basis'];
}

/**
 * The packs that are due to be read again on a day, the longest overdue first. A pack that was never read is due since
 * the day on which that was tried.
 * @param today ISO date
 * @example listDuePacks([texas], '2027-11-25', 12) // [{ pack: 'TX', readOn: '2026-11-25', dueOn: '2027-11-25', … }]
 */
export function listDuePacks(packs: readonly RulePack[], today: string, recheckMonths: number): DuePack[] {
  return packs
    .map((pack) => {
      const { name, readOn, basis } = pack;
      const dueOn = basis === 'not-read' ? readOn : monthsAfter(readOn, recheckMonths);
      return { pack: packCode(pack), name, readOn, dueOn, basis };
    })
    .filter(({ dueOn }) => dueOn <= today)
    .sort((a, b) => (a.dueOn === b.dueOn ? compare(a.pack, b.pack) : compare(a.dueOn, b.dueOn)));
}

function compare(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
