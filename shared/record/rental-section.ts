import type { Known } from '../call/known.js';
import type { Ternary } from '../kernel/truth.js';

/** The release of one rider, and who signed it. */
export interface RiderRelease {
  id: string;
  /** Id of a person of the section on people. */
  person?: string;
  signed?: Known<Ternary>;
  version?: string;
  signer?: string;
  guardian?: string;
  relation?: string;
  /** Where the original is. */
  original?: string;
}

export interface RentalOperator {
  id: string;
  person?: string;
  authorised?: Known<Ternary>;
  /** Who really drove. */
  drove?: Known<Ternary>;
  educationCard?: Known<string>;
  age?: Known<number>;
}

export interface IssuedGear {
  id: string;
  what?: string;
  issued?: Known<Ternary>;
  returned?: Known<Ternary>;
}

export interface RentalSection {
  agreement?: string;
  renter?: string;
  identityChecked?: Known<Ternary>;
  /** The name on the card was held against the identity; the card's number has no place in the record. */
  cardMatchChecked?: Known<Ternary>;
  departedAt?: Known<string>;
  dueBackAt?: Known<string>;
  returnedAt?: Known<string>;
  releases?: RiderRelease[];
  operators?: RentalOperator[];
  earlierRentals?: Known<number>;
  briefingGiven?: Known<Ternary>;
  briefingBy?: string;
  /** That person's training as it stood on the day. */
  briefingTraining?: Known<string>;
  videoShown?: Known<Ternary>;
  gear?: IssuedGear[];
}
