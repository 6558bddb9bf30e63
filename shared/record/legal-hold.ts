import type { Consequence } from './weigh-consequence.js';

/** Why everything about an incident has to be kept as it is. */
export type HoldCause = 'death' | 'missing' | 'beyond-first-aid' | 'claim' | 'request' | 'by-hand';

export const HOLD_CAUSES: readonly HoldCause[] = [
  'death',
  'missing',
  'beyond-first-aid',
  'claim',
  'request',
  'by-hand',
];

/** Somebody who keeps things that bear on the incident, and has to know that nothing of them may go. */
export interface Custodian {
  /** Id of the account; another id for somebody without one. */
  id: string;
  name: string;
  /** Has an account, and acknowledges by it. */
  account: boolean;
  namedAt: string;
  namedBy: string;
  acknowledgedAt?: string;
  /** Who wrote the acknowledgement down, where it was given on paper. */
  acknowledgedTo?: string;
}

/** Counsel's word that the hold may end, as a manager entered it. */
export interface HoldRelease {
  counsel: string;
  /** Day of the calendar, YYYY-MM-DD. */
  releasedOn: string;
  /** Absent once it was withdrawn. */
  reason?: string;
  enteredBy: string;
  enteredAt: string;
}

/** A duty to keep everything, from an instant on. It ends by counsel's release and by nothing else. */
export interface LegalHold {
  id: string;
  cause: HoldCause;
  /** Ids of the people, the entries of the contact log or the request that it started with; it may name none. */
  of: string[];
  since: string;
  startedBy: string;
  reason?: string;
  custodians: Custodian[];
  released?: HoldRelease;
}

/** Something taken out of the record while it was held, on the direction of counsel. */
export interface DirectedWithdrawal {
  id: string;
  section: string;
  path: string;
  counsel: string;
  directedOn: string;
  at: string;
}

export interface HoldsSection {
  holds?: LegalHold[];
  withdrawals?: DirectedWithdrawal[];
}

/**
 * The causes for which a hold starts by itself: death, somebody missing, treatment beyond first aid, a claim. What is
 * only not ruled out starts none.
 * @example startsHold({ ...NOTHING_KNOWN, died: 'yes', claimed: true }) // ['death', 'claim']
 */
export function startsHold({ died, missing, beyondFirstAid, claimed }: Consequence): HoldCause[] {
  const causes: readonly (readonly [HoldCause, boolean])[] = [
    ['death', died === 'yes'],
    ['missing', missing === 'yes'],
    ['beyond-first-aid', beyondFirstAid === 'yes'],
    ['claim', claimed],
  ];
  return causes.filter(([, holds]) => holds).map(([cause]) => cause);
}

/** Whether anything is to be kept: `isHeld({ holds: [] })` is false. */
export function isHeld({ holds = [] }: HoldsSection): boolean {
  return holds.some(({ released }) => released === undefined);
}

/**
 * Whether a cause is a new one: no hold for it stands, and counsel has released none that began with the same people or
 * letters. So a released hold does not start again at the next change, and a second claim starts one.
 * @example isNewCause({}, 'claim', ['k1']) // true
 */
export function isNewCause({ holds = [] }: HoldsSection, cause: HoldCause, of: readonly string[]): boolean {
  const before = holds.filter((hold) => hold.cause === cause);
  if (before.some(({ released }) => released === undefined)) return false;
  return before.length === 0 || of.some((id) => !before.some((hold) => hold.of.includes(id)));
}
