import type { Ternary } from '../kernel/truth.js';
import type { Known } from './known.js';
import type { Stamp } from './stamp.js';

/** Help is needed now; somebody tells it afterwards; found when a craft was checked in; a craft is not back. */
export type CallKind = 'now' | 'late' | 'check-in' | 'overdue';
export type CallChannel = 'one-touch' | 'phone' | 'radio' | 'in-person' | 'message' | 'other';

export const CALL_KINDS: readonly CallKind[] = ['now', 'late', 'check-in', 'overdue'];
export const CALL_CHANNELS: readonly CallChannel[] = [
  'one-touch',
  'phone',
  'radio',
  'in-person',
  'message',
  'other',
];

/** How a craft that was not back turned out. */
export type OverdueEnd = 'late' | 'broken-down' | 'aground' | 'stolen' | 'found-empty' | 'became-incident';

export const OVERDUE_ENDS: readonly OverdueEnd[] = [
  'late',
  'broken-down',
  'aground',
  'stolen',
  'found-empty',
  'became-incident',
];

/** Somebody who can be reached about what happened. */
export interface Party {
  name?: string;
  /** Renter, passer-by, dock hand, other boat, relative. */
  role?: string;
  callBack?: string;
  address?: string;
}

/** What somebody is asked who tells it only afterwards, such as a guest a week later. */
export interface LateNotice {
  whyNow?: Known<string>;
  /** Whom of ours they told at the time, and when (RFC 3339): then the business has known since. */
  toldThen?: Known<string>;
  toldThenAt?: Known<string>;
  /** Care that they had since, in their words: what they needed is for the section on people. */
  careSince?: Known<string>;
  /** Papers, pictures or messages that they have. */
  keeps?: Known<string>;
}

/** A craft that is not back, and how that turned out. */
export interface Overdue {
  /** RFC 3339, as all times here. */
  dueBackAt?: Known<string>;
  lastSeenAt?: Known<string>;
  lastSeenWhere?: Known<string>;
  lastSpokenAt?: Known<string>;
  /** Where they meant to go. */
  plan?: Known<string>;
  /** Telephone, loud hailer, the far ramp: what was tried to reach them. */
  tried?: string[];
  searchBegan?: Stamp;
  ended?: Known<OverdueEnd>;
  endedAt?: Known<string>;
  /** Where and how it was found, or who brought it back. */
  endedHow?: Known<string>;
}

/** The first notice that somebody needs help. Every member may be missing: any one of them makes an incident. */
export interface Call {
  kind?: CallKind;
  channel?: CallChannel;
  taken?: Stamp;
  takenBy?: string;
  /** Where the call was taken, which is seldom where it happened. */
  takenWhere?: string;
  caller?: Party;
  otherParties?: (Party & { id: string })[];
  /** What they said, in their words. */
  said?: string;
  /** Craft as they were called, such as PWC 7: what they are is for the section on craft. */
  craftNamed?: string[];
  /** As told; the section on time and place says where and when it was. */
  happenedWhere?: Known<string>;
  happenedWhen?: Known<string>;
  peopleInWater?: Known<number>;
  inDangerNow?: Known<Ternary>;
  emergencyServicesTold?: Known<Ternary>;
  late?: LateNotice;
  overdue?: Overdue;
}
