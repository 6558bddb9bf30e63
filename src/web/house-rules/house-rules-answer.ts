import type { AdoptedRules, HouseRule } from '../../../shared/follow-up/house-rule.js';

/** One entry of what was adopted; no rules in it take those before out of force. */
export interface AdoptedEntry extends AdoptedRules {
  readonly id: string;
  readonly person: string;
  readonly recordedAt: string;
}

/** `GET /api/house-rules` */
export interface HouseRulesAnswer {
  /** What is often written: common practice, no source. */
  readonly offered: readonly HouseRule[];
  /** The first written first. */
  readonly adopted: readonly AdoptedEntry[];
  readonly inForce: string | null;
}

/** What is typed of one rule that is ticked; empty where it has no figure. */
export type Figures = Readonly<Partial<Record<HouseRule['id'], string>>>;

export type Standing = 'in-force' | 'coming' | 'past' | 'corrected';

/**
 * How an entry stands: the one that the service says is in force, one of a later day, one that a later entry for the
 * same day took the place of, or one whose days are over.
 */
export function standingOf(entry: AdoptedEntry, { adopted, inForce }: HouseRulesAnswer): Standing {
  if (entry.id === inForce) return 'in-force';
  const isLastOfDay = adopted.findLast(({ adoptedOn }) => adoptedOn === entry.adoptedOn)?.id === entry.id;
  if (!isLastOfDay) return 'corrected';
  const current = adopted.find(({ id }) => id === inForce);
  return current === undefined || entry.adoptedOn > current.adoptedOn ? 'coming' : 'past';
}

/** The rule with its figure: `Ride where the water is at least 3 ft deep.` */
export function tellRule({ text }: HouseRule, value: number | string | null): string {
  return text.replace('{value}', String(value ?? ''));
}
