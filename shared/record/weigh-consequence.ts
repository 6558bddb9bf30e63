import { anyOf, type Ternary, truthOf } from '../kernel/truth.js';

/** What came of an incident, as far as it decides about its craft. Unknown until somebody has said so. */
export interface Consequence {
  readonly died: Ternary;
  readonly missing: Ternary;
  /** Somebody needed treatment beyond first aid, given or not. */
  readonly beyondFirstAid: Ternary;
  /** Somebody was hurt at all. */
  readonly hurt: Ternary;
  /** Somebody has claimed in writing, or a lawyer has written. */
  readonly claimed: boolean;
  /** All damage together, in cents, between two bounds; null while nobody has put a figure on it. */
  readonly damage: { readonly lowCents: number; readonly highCents: number } | null;
}

export const NOTHING_KNOWN: Consequence = {
  died: 'unknown',
  missing: 'unknown',
  beyondFirstAid: 'unknown',
  hurt: 'unknown',
  claimed: false,
  damage: null,
};

/** From the lightest to the gravest. */
export const GRAVITIES = ['damage-only', 'hurt', 'unclear', 'grave'] as const;

/**
 * How grave an incident is for its craft. Grave: death, a person missing, treatment beyond first aid (the injuries of
 * 33 CFR 173.55(a)(1), (2) and (4)), or a claim. Unclear: one of these cannot be ruled out yet.
 */
export type Gravity = (typeof GRAVITIES)[number];

/**
 * @example weighConsequence(NOTHING_KNOWN) // 'unclear'
 * @example weighConsequence({ ...NOTHING_KNOWN, died: 'yes' }) // 'grave'
 */
export function weighConsequence({ died, missing, beyondFirstAid, hurt, claimed }: Consequence): Gravity {
  const harmed = anyOf([died, missing, beyondFirstAid].map(truthOf));
  if (harmed === 'true' || claimed) return 'grave';
  if (harmed === 'unknown') return 'unclear';
  return hurt === 'no' ? 'damage-only' : 'hurt';
}

/** `isGraver('grave', 'hurt')` is true: what was decided when it looked lighter has to be decided again. */
export function isGraver(now: Gravity, before: Gravity): boolean {
  return GRAVITIES.indexOf(now) > GRAVITIES.indexOf(before);
}
