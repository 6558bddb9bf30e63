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

/** Somebody who can be reached about what happened. */
export interface Party {
  name?: string;
  /** Renter, passer-by, dock hand, other boat, relative. */
  role?: string;
  callBack?: string;
  address?: string;
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
}
