import { readInstant } from '../time/read-instant.js';

/** A time of something that was done: pressed when it happened, or entered later from memory or a log. */
export interface Stamp {
  /** As the phone's clock or the person said (RFC 3339). */
  at: string;
  how: 'pressed' | 'entered';
  /** Seconds by which the phone's clock was ahead of the service's; negative when it was behind. */
  phoneOffsetS?: number;
  /** The same moment by the other side's clock, as dispatch logged it. */
  theirs?: string;
}

export const STAMP_WAYS: readonly Stamp['how'][] = ['pressed', 'entered'];

/**
 * When it was by the service's clock, in milliseconds since the Unix epoch. Only a pressed time carries the error of
 * the phone; what a person entered is taken as said.
 * @example stampInstant({ at: '2026-06-13T16:20:30Z', how: 'pressed', phoneOffsetS: 30 }) // that of 16:20:00Z
 */
export function stampInstant({ at, how, phoneOffsetS = 0 }: Stamp): number {
  return readInstant(at) - (how === 'pressed' ? phoneOffsetS * 1000 : 0);
}
