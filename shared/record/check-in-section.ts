import type { Known } from '../call/known.js';
import type { Stamp } from '../call/stamp.js';
import type { Ternary } from '../kernel/truth.js';

export type RenterAnswer = 'agrees' | 'disputes' | 'refuses' | 'absent';

export const RENTER_ANSWERS: readonly RenterAnswer[] = ['agrees', 'disputes', 'refuses', 'absent'];

/** One thing found on a craft that came back. */
export interface CheckInFinding {
  id: string;
  /** Id of a craft of the section on craft. */
  craft?: string;
  where?: string;
  what?: string;
  /** The check-out sheet showed it already: it was there before. */
  shownAtCheckOut?: Known<Ternary>;
  /** Where the renter says something else of it than of the rest. */
  renterAnswer?: Known<RenterAnswer>;
  photographs?: string[];
  /** Id of the line of the section on damage that puts a figure on it. */
  damageLine?: string;
}

/** The joint inspection of one minute when craft come back, with what the renter says of it. */
export interface CheckInSection {
  departedAt?: Known<string>;
  returnedAt?: Known<string>;
  inspected?: Stamp;
  by?: string;
  /** Who was there for the renter. */
  renter?: string;
  checkOutSheet?: string;
  findings?: CheckInFinding[];
  found?: Known<string>;
  renterAnswer?: Known<RenterAnswer>;
  renterWords?: string;
  /** Where the signature is kept. */
  signature?: string;
  signed?: Stamp;
}
