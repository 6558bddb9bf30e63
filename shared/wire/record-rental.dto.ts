import type { Known } from '../call/known.js';
import type { Ternary } from '../kernel/truth.js';
import type { IssuedGear, RentalOperator, RentalSection, RiderRelease } from '../record/rental-section.js';
import { Items, KnownFact, Needed, Value } from './record-members.js';
import { count, id, instant, line, ternary } from './record-values.js';

class RiderReleaseDto implements RiderRelease {
  @Needed(id)
  id: string;

  @Value(id)
  person?: string;

  @KnownFact(ternary)
  signed?: Known<Ternary>;

  @Value(line)
  version?: string;

  @Value(line)
  signer?: string;

  @Value(line)
  guardian?: string;

  @Value(line)
  relation?: string;

  @Value(line)
  original?: string;
}

class RentalOperatorDto implements RentalOperator {
  @Needed(id)
  id: string;

  @Value(id)
  person?: string;

  @KnownFact(ternary)
  authorised?: Known<Ternary>;

  @KnownFact(ternary)
  drove?: Known<Ternary>;

  @KnownFact(line)
  educationCard?: Known<string>;

  @KnownFact(count)
  age?: Known<number>;
}

class IssuedGearDto implements IssuedGear {
  @Needed(id)
  id: string;

  @Value(line)
  what?: string;

  @KnownFact(ternary)
  issued?: Known<Ternary>;

  @KnownFact(ternary)
  returned?: Known<Ternary>;
}

export class RentalSectionDto implements RentalSection {
  @Value(line)
  agreement?: string;

  @Value(line)
  renter?: string;

  @KnownFact(ternary)
  identityChecked?: Known<Ternary>;

  @KnownFact(ternary)
  cardMatchChecked?: Known<Ternary>;

  @KnownFact(instant)
  departedAt?: Known<string>;

  @KnownFact(instant)
  dueBackAt?: Known<string>;

  @KnownFact(instant)
  returnedAt?: Known<string>;

  @Items(() => RiderReleaseDto)
  releases?: RiderReleaseDto[];

  @Items(() => RentalOperatorDto)
  operators?: RentalOperatorDto[];

  @KnownFact(count)
  earlierRentals?: Known<number>;

  @KnownFact(ternary)
  briefingGiven?: Known<Ternary>;

  @Value(line)
  briefingBy?: string;

  @KnownFact(line)
  briefingTraining?: Known<string>;

  @KnownFact(ternary)
  videoShown?: Known<Ternary>;

  @Items(() => IssuedGearDto)
  gear?: IssuedGearDto[];
}
