/** Somebody who is out on a craft, as the rental paper names them. */
export interface Rider {
  readonly id: string;
  readonly name: string;
  readonly phone?: string;
}

/** What was written down when a craft went out. Names and numbers of renters: for those who work here. */
export interface OutingDetails {
  readonly renter?: string;
  readonly phone?: string;
  /** How many are aboard, the driver among them. */
  readonly aboard?: number;
  readonly riders?: readonly Rider[];
  /** The car and trailer in the lot: make, colour, plate. */
  readonly vehicle?: string;
  /** As it was read: full, three quarters. */
  readonly fuel?: string;
  /** Where they meant to go. */
  readonly plan?: string;
  readonly remark?: string;
}

/** How a craft stands at a moment. `not-known`: nobody wrote down that it went out or counted it in. */
export type Standing = 'late' | 'due-not-known' | 'out' | 'not-known' | 'in';

/** In the order in which somebody should look at them. */
export const STANDINGS: readonly Standing[] = ['late', 'due-not-known', 'out', 'not-known', 'in'];

/** What is known of where a craft is. */
export interface Whereabouts {
  /** It went out and nobody wrote it back; its due time in RFC 3339, or null where nobody knows it. */
  readonly out: { readonly dueBackAt: string | null } | null;
  /** When it was last marked back or counted in (RFC 3339); null when never. */
  readonly lastIn: string | null;
}

/**
 * How a craft stands at `now`, epoch milliseconds. It is late from the very moment at which it was due.
 * @example standingOf({ out: { dueBackAt: '2026-06-13T14:00:00-05:00' }, lastIn: null }, Date.parse('2026-06-13T19:00:00Z'))
 * // 'late'
 */
export function standingOf({ out, lastIn }: Whereabouts, now: number): Standing {
  if (out === null) return lastIn === null ? 'not-known' : 'in';
  if (out.dueBackAt === null) return 'due-not-known';
  return Date.parse(out.dueBackAt) <= now ? 'late' : 'out';
}
