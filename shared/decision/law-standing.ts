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
  const due = monthsLater(readOn, recheckMonths);
  if (today < due) return { mayDecide: true, because: '' };
  return {
    mayDecide: false,
    because: `Its law was read on ${readOn} and is due to be read again since ${due}.`,
  };
}

/**
 * The same day of the month so many months later, or the last of that month where it has no such day.
 * @example monthsLater('2026-08-31', 6) // '2027-02-28'
 */
export function monthsLater(date: string, months: number): string {
  const [year = 0, month = 1, day = 1] = date.split('-').map(Number);
  const last = new Date(Date.UTC(year, month + months, 0)).getUTCDate();
  return new Date(Date.UTC(year, month - 1 + months, Math.min(day, last))).toISOString().slice(0, 10);
}
