import type { SectionName } from '../record/incident-record.js';
import type { FormBasis } from './report-form.js';

/** An item is one of these and never two: told, known not to be known, or not there. */
export type ItemState = 'answered' | 'unknown' | 'missing';
export const ITEM_STATES: readonly ItemState[] = ['answered', 'unknown', 'missing'];

export type Reporter = 'owner' | 'operator';
export const REPORTERS: readonly Reporter[] = ['owner', 'operator'];

/** One report: of one vessel, by one reporter. */
export interface ReportKey {
  /** Id of the craft of the record; null while none is named. */
  readonly craft: string | null;
  readonly reporter: Reporter;
}

export interface ReportHead extends ReportKey {
  /** `c1.owner`; `_.owner` while no craft is named. */
  readonly id: string;
  /** What the craft is called. */
  readonly vessel: string;
  /** A customer drove and reports as operator: what is theirs to write is left to them. */
  readonly customerWrites: boolean;
}

/** One line of an item: what is asked, of whom or what, and what the record says. */
export interface ReportLine {
  readonly label: string;
  /** Person, craft or thing that it is about, where it is about one of several. */
  readonly subject: string | null;
  readonly state: ItemState;
  /** The value as text, why it is not known, or what is missing. */
  readonly text: string;
  /** Where it came from: `as told by Ann`, `read off the wind gauge`. */
  readonly source: string | null;
  /** Where the record holds it; null for what only the report holds. */
  readonly section: SectionName | null;
  /** Field of the section, as amendments name it, such as `/craft/c1/hullNumber`; empty for the section as a whole. */
  readonly path: string;
}

export interface FilledItem {
  /** Number of the paragraph, or state and name: `6`, `WI-gear`. */
  readonly id: string;
  readonly citation: string;
  readonly words: string;
  readonly basis: FormBasis;
  readonly state: ItemState;
  readonly lines: readonly ReportLine[];
}

export type ItemCounts = Readonly<Record<ItemState, number>>;

export interface FilledReport extends ReportHead {
  readonly items: readonly FilledItem[];
  /** What the rules of the states concerned add. */
  readonly stateItems: readonly FilledItem[];
  /** Over both lists. */
  readonly counts: ItemCounts;
}

/**
 * Of several lines the worst decides: what is missing, then what nobody knows.
 * @example worstOf(['answered', 'unknown']) // 'unknown'
 */
export function worstOf(states: readonly ItemState[]): ItemState {
  if (states.length === 0 || states.includes('missing')) return 'missing';
  return states.includes('unknown') ? 'unknown' : 'answered';
}

/** `countItems([{ state: 'missing', … }])` is `{ answered: 0, unknown: 0, missing: 1 }`. */
export function countItems(items: readonly Pick<FilledItem, 'state'>[]): ItemCounts {
  const count = (state: ItemState): number => items.filter((item) => item.state === state).length;
  return { answered: count('answered'), unknown: count('unknown'), missing: count('missing') };
}
