import { dollars } from '../quantity/cents.js';
import type { Hold, ServiceState } from './follow-service.js';
import { STANDINGS, type Standing } from './service-step.js';
import { weighConsequence } from './weigh-consequence.js';

/** What a release takes. */
export interface ReleaseRule {
  /** Who releases, at least. */
  readonly by: Standing;
  readonly photographs: boolean;
  /** Of counsel or the insurer. */
  readonly clearance: boolean;
  /** Why this rule, for people. */
  readonly because: string;
}

export type RefusalCode =
  | 'AGENCY_HOLDS_IT'
  | 'ENGINE_MUST_NOT_START'
  | 'PHOTOGRAPHS_MISSING'
  | 'CLEARANCE_MISSING'
  | 'STANDING_TOO_LOW'
  | 'NOT_NOW';

/** Why something may not be done to a craft now, and what would change that. */
export interface Refusal {
  readonly code: RefusalCode;
  readonly detail: string;
}

export interface ReleaseQuestion {
  readonly state: ServiceState;
  readonly hold: Hold;
  readonly by: Standing;
  /** Photographs that come with the release itself. */
  readonly photographs: readonly string[];
  /** Below this a shift lead releases after damage alone; null while the owner has named none. */
  readonly ownerAmountCents: number | null;
}

/**
 * What the release of a hold takes. Whatever is not known counts as the graver case.
 * @example releaseRule(upkeepHold, null).by // 'shift-lead'
 */
export function releaseRule({ incident, consequence }: Hold, ownerAmountCents: number | null): ReleaseRule {
  if (incident === null) {
    return { by: 'shift-lead', photographs: false, clearance: false, because: 'It was out for upkeep.' };
  }
  switch (weighConsequence(consequence)) {
    case 'grave':
      return { by: 'manager', photographs: true, clearance: true, because: GRAVE };
    case 'unclear':
      return { by: 'manager', photographs: true, clearance: true, because: UNCLEAR };
    case 'hurt':
      return { by: 'manager', photographs: true, clearance: false, because: HURT };
    case 'damage-only':
      return { photographs: true, clearance: false, ...whoAfterDamage(consequence.damage, ownerAmountCents) };
  }
}

const GRAVE = 'Somebody died, is missing or needed treatment beyond first aid, or there is a claim.';
const UNCLEAR = 'It is not ruled out that somebody died, is missing or needed treatment beyond first aid.';
const HURT = 'Somebody was hurt, or that nobody was is not known.';

function whoAfterDamage(
  damage: Hold['consequence']['damage'],
  amount: number | null,
): Pick<ReleaseRule, 'by' | 'because'> {
  if (amount === null) return { by: 'manager', because: 'The owner has named no amount for shift leads.' };
  if (damage === null) return { by: 'manager', because: 'Nobody has put a figure on the damage.' };
  return damage.highCents < amount
    ? { by: 'shift-lead', because: `The damage is below the owner's amount of ${dollars(amount)}.` }
    : { by: 'manager', because: `The damage may reach the owner's amount of ${dollars(amount)}.` };
}

/**
 * Whether a craft may go out again as far as one hold is concerned: every reason against it, none when it may.
 * @example mayRelease({ state, hold, by: 'shift-lead', photographs: ['p1'], ownerAmountCents: 50_000 }) // []
 */
export function mayRelease({ state, hold, by, photographs, ownerAmountCents }: ReleaseQuestion): Refusal[] {
  const rule = releaseRule(hold, ownerAmountCents);
  const refusals: Refusal[] = [];
  const refuse = (code: RefusalCode, detail: string): unknown => refusals.push({ code, detail });
  if (state.heldByAgency !== null) {
    refuse('AGENCY_HOLDS_IT', `${state.heldByAgency.agency} holds the craft: record its return first.`);
  }
  if (state.doNotStart.length > 0) {
    refuse('ENGINE_MUST_NOT_START', `The engine must not be started: ${state.doNotStart.join('; ')}.`);
  }
  if (rule.photographs && hold.photographs.length + photographs.length === 0) {
    refuse('PHOTOGRAPHS_MISSING', 'Photograph the craft as it is, and name the photographs.');
  }
  if (rule.clearance && hold.clearances.length === 0) {
    refuse('CLEARANCE_MISSING', `${rule.because} Record the clearance of counsel or the insurer first.`);
  }
  refusals.push(...refuseStanding(by, rule.by, rule.because));
  return refusals;
}

/** A refusal where `by` may decide less than what is needed: `refuseStanding('staff', 'manager')` has one. */
export function refuseStanding(by: Standing, needed: Standing, because = ''): Refusal[] {
  if (STANDINGS.indexOf(by) >= STANDINGS.indexOf(needed)) return [];
  const who = needed === 'manager' ? 'a manager' : "the day's shift lead or a manager";
  return [{ code: 'STANDING_TOO_LOW', detail: `${because} This is for ${who}.`.trim() }];
}
