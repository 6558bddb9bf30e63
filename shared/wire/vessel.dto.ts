import type { Ternary } from '../kernel/truth.js';
import type { Vessel, VesselUse } from '../record/incident-facts.js';
import { BooleanFact, Fact, IdFact, MayBeAbsent, OneOf, TernaryFact } from './declare-fact.js';
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
}
