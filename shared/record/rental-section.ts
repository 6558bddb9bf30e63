import type { Known } from '../call/known.js';
import type { Ternary } from '../kernel/truth.js';

/** The release of one rider, and who signed it. */
export interface RiderRelease {
  id: string;
  /** Id of a person of the section on people. */
  person?: string;
  signed?: Known<Ternary>;
  signedAt?: Known<string>;
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
  /** Where the person is not listed. */
  name?: string;
  /** Id of a craft of the section on craft. */
  craft?: string;
  authorised?: Known<Ternary>;
  /** Who really drove. */
  drove?: Known<Ternary>;
  educationCard?: Known<string>;
  age?: Known<number>;
}

export interface IssuedGear {
  id: string;
  what?: string;
  person?: string;
  count?: Known<number>;
  issued?: Known<Ternary>;
  returned?: Known<Ternary>;
  /** As it came back. */
  condition?: Known<string>;
}

export interface RentalSection {
  agreement?: string;
  agreementVersion?: string;
  /** Where the original is. */
  agreementOriginal?: string;
  renter?: string;
  /** Id of a person of the section on people, where the renter is one of them. */
  renterPerson?: string;
  renterAge?: Known<number>;
  identityChecked?: Known<Ternary>;
  /** Driver license of Texas, passport: which paper, not its number. */
  identityPaper?: Known<string>;
  /** The name on the card was held against the identity; the card's number has no place in the record. */
  cardMatchChecked?: Known<Ternary>;
  agesChecked?: Known<Ternary>;
  departedAt?: Known<string>;
  dueBackAt?: Known<string>;
  extendedUntil?: Known<string>;
  returnedAt?: Known<string>;
  releases?: RiderRelease[];
  operators?: RentalOperator[];
  earlierRentals?: Known<number>;
  lastRentedAt?: Known<string>;
  briefingGiven?: Known<Ternary>;
  briefedAt?: Known<string>;
  /** Ids of the people who were briefed. */
  briefed?: string[];
  briefingLanguage?: string;
  briefingBy?: string;
  /** That person's training as it stood on the day. */
  briefingTraining?: Known<string>;
  videoShown?: Known<Ternary>;
  videoVersion?: string;
  gear?: IssuedGear[];
}
