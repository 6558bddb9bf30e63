import type { Truth } from '../kernel/truth.js';
import type { PeriodStart } from './retention-form.js';

/** From when a period counts, as far as anybody can tell. Days are ISO dates. */
export type StartDay =
  /** Somewhere between the two, both included. */
  | {
      readonly known: true;
      readonly earliest: string;
      readonly latest: string;
      readonly missing: readonly string[];
    }
  /** Nobody knows how late it may be. */
  | { readonly known: false; readonly earliest: string | null; readonly missing: readonly string[] }
  /** It has not begun. */
  | { readonly known: 'not-begun'; readonly missing: readonly string[] };

/** What decides how long something is kept. */
export interface RetentionFacts {
  readonly starts: Readonly<Partial<Record<PeriodStart, StartDay>>>;
  readonly employeeHurt: Truth;
  /** USPS codes of the states in which it can have happened; null while nobody said. */
  readonly states: readonly string[] | null;
  /** Months by which the business lengthened its own choice, by the id of the period. */
  readonly chosenMonths: Readonly<Record<string, number>>;
  /** Until when, that day included, somebody decided to keep it. */
  readonly keptUntil: string | null;
}

export function onDay(day: string): StartDay {
  return { known: true, earliest: day, latest: day, missing: [] };
}
