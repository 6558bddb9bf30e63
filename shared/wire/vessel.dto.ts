import type { Ternary } from '../kernel/truth.js';
import type { CharterSigns, RentalFacts, Vessel, VesselUse } from '../record/incident-facts.js';
import { BooleanFact, Fact, IdFact, MayBeAbsent, OneOf, TernaryFact } from './declare-fact.js';
import { InstantFact } from './declare-instant.js';
import { isObject } from './is-object.js';
import { stateCodeFault } from './place.dto.js';

const USES: readonly VesselUse[] = [
  'rental',
  'recreational',
  'passenger-for-hire',
  'staff-operated',
  'other-commercial',
];

function countFault(value: unknown): string | null {
  return Number.isInteger(value) && Number(value) >= 0
    ? null
    : 'Must be a whole number of people, 0 or more.';
}

function objectFault(value: unknown): string | null {
  return isObject(value) ? null : 'Must be an object.';
}

/** What Coast Guard guidance weighs when it asks whether a vessel was let bareboat. */
export class CharterSignsDto implements CharterSigns {
  @MayBeAbsent()
  @TernaryFact()
  crewSupplied?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  ownerMayRefuseCrew?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  ownerAboard?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  renterPaysFuel?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  renterInsures?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  surveyedBeforeAndAfter?: Ternary;
}

/** What was agreed with the renter of a vessel, and what came of it. */
export class RentalFactsDto implements RentalFacts {
  @MayBeAbsent()
  @InstantFact()
  dueBackAt?: string;

  @MayBeAbsent()
  @InstantFact()
  returnedAt?: string;
}

/** One vessel concerned. */
export class VesselDto implements Vessel {
  @IdFact()
  id: string;

  @OneOf(USES)
  use: VesselUse;

  @MayBeAbsent()
  @BooleanFact()
  ours?: boolean;

  @MayBeAbsent()
  @TernaryFact()
  numbered?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  inspected?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  completeLoss?: Ternary;

  @MayBeAbsent()
  @Fact('a whole number of people', countFault)
  aboard?: number;

  @MayBeAbsent()
  @Fact('a state code', stateCodeFault)
  stateOfNumber?: string;

  @MayBeAbsent()
  @TernaryFact()
  motorized?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  documented?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  passengersForHire?: Ternary;

  @MayBeAbsent()
  @Fact('the signs of a bareboat rental', objectFault)
  charter?: CharterSignsDto;

  @MayBeAbsent()
  @Fact('what was agreed with the renter', objectFault)
  rental?: RentalFactsDto;
}
