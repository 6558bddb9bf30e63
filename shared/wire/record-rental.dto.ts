import type { Known } from '../call/known.js';
import type { Ternary } from '../kernel/truth.js';
import type { IssuedGear, RentalOperator, RentalSection, RiderRelease } from '../record/rental-section.js';
import { Items, KnownFact, Needed, Value } from './record-members.js';
import { count, id, ids, instant, line, ternary } from './record-values.js';

class RiderReleaseDto implements RiderRelease {
  @Needed(id)
  id: string;

  @Value(id)
  person?: string;

  @KnownFact(ternary)
  signed?: Known<Ternary>;

  @KnownFact(instant)
  signedAt?: Known<string>;

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

  @Value(line)
  name?: string;

  @Value(id)
  craft?: string;

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

  @Value(id)
  person?: string;

  @KnownFact(count)
  count?: Known<number>;

  @KnownFact(ternary)
  issued?: Known<Ternary>;

  @KnownFact(ternary)
  returned?: Known<Ternary>;

  @KnownFact(line)
  condition?: Known<string>;
}

export class RentalSectionDto implements RentalSection {
  @Value(line)
  agreement?: string;

  @Value(line)
  agreementVersion?: string;

  @Value(line)
  agreementOriginal?: string;

  @Value(line)
  renter?: string;

  @Value(id)
  renterPerson?: string;

  @KnownFact(count)
  renterAge?: Known<number>;

  @KnownFact(ternary)
  identityChecked?: Known<Ternary>;

  @KnownFact(line)
  identityPaper?: Known<string>;

  @KnownFact(ternary)
  cardMatchChecked?: Known<Ternary>;

  @KnownFact(ternary)
  agesChecked?: Known<Ternary>;

  @KnownFact(instant)
  departedAt?: Known<string>;

  @KnownFact(instant)
  dueBackAt?: Known<string>;

  @KnownFact(instant)
  extendedUntil?: Known<string>;

  @KnownFact(instant)
  returnedAt?: Known<string>;

  @Items(() => RiderReleaseDto)
  releases?: RiderReleaseDto[];

  @Items(() => RentalOperatorDto)
  operators?: RentalOperatorDto[];

  @KnownFact(count)
  earlierRentals?: Known<number>;

  @KnownFact(instant)
  lastRentedAt?: Known<string>;

  @KnownFact(ternary)
  briefingGiven?: Known<Ternary>;

  @KnownFact(instant)
  briefedAt?: Known<string>;

  @Value(ids)
  briefed?: string[];

  @Value(line)
  briefingLanguage?: string;

  @Value(line)
  briefingBy?: string;

  @KnownFact(line)
  briefingTraining?: Known<string>;

  @KnownFact(ternary)
  videoShown?: Known<Ternary>;

  @Value(line)
  videoVersion?: string;

  @Items(() => IssuedGearDto)
  gear?: IssuedGearDto[];
}
