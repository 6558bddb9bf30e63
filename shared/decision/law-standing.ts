import { monthsAfter } from '../time/months-after.js';
import type { PackBasis } from '../law/rule-pack.js';

/** How well the law behind a duty is known today. */
export interface LawStanding {
  /** Read in the law itself, and not so long ago that it must be read again. */
  readonly mayDecide: boolean;
  /** Why a call to the agency or counsel comes first, in a sentence; empty when none is needed. */
  readonly because: string;
}

const NOT_IN_LAW: Readonly<Record<Exclude<PackBasis, 'read-primary'>, string>> = {
  'read-agency': 'Its rule was read on the agency’s own pages, not in the law.',
  'read-secondary': 'Its rule was read in a secondary source, not in the law.',
  memory: 'Its rule is from memory: nobody has read the law for it.',
  'not-read': 'Its law has not been read.',
};

/**
 * Whether "no report due" may rest on a rule pack alone. `today` and `readOn` are ISO dates.
 * @example lawStanding('read-primary', '2026-11-25', '2027-11-24', 12) // { mayDecide: true, because: '' }
 * @example lawStanding('read-primary', '2026-11-25', '2027-11-25', 12).mayDecide // false
 */
export function lawStanding(
  basis: PackBasis,
  readOn: string | null,
  today: string,
  recheckMonths: number,
): LawStanding {
  if (basis !== 'read-primary') return { mayDecide: false, because: NOT_IN_LAW[basis] };
  if (readOn === null) return { mayDecide: false, because: NOT_IN_LAW['not-read'] };
  const due = monthsAfter(readOn, recheckMonths);
  if (today < due) return { mayDecide: true, because: '' };
  return {
    mayDecide: false,
    because: `Its law was read on ${readOn} and is due to be read again since ${due}.`,
  };
}
