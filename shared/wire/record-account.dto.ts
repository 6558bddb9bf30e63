import type { Known } from '../call/known.js';
import type { Stamp } from '../call/stamp.js';
import type { Ternary } from '../kernel/truth.js';
import type { AccountSection, CheckInSection, ConditionsSection } from '../record/account-sections.js';
import type { Quantity } from '../record/quantity-as-entered.js';
import { quantity, stamp } from './record-compounds.js';
import { KnownFact, Value } from './record-members.js';
import { casualtyTypes, instant, line, lines, oneOf, ternary, text } from './record-values.js';

export class AccountDto implements AccountSection {
  @KnownFact(casualtyTypes)
  casualtyTypes?: Known<string[]>;

  @KnownFact(ternary)
  involvesVesselOrEquipment?: Known<Ternary>;

  @KnownFact(ternary)
  oilSheen?: Known<Ternary>;

  @KnownFact(text)
  whatHappened?: Known<string>;

  @KnownFact(text)
  equipmentFailures?: Known<string>;

  @KnownFact(lines)
  contributingFactors?: Known<string[]>;
}

export class ConditionsDto implements ConditionsSection {
  @KnownFact(line)
  weather?: Known<string>;

  @KnownFact(line)
  water?: Known<string>;

  @KnownFact(quantity)
  waves?: Known<Quantity>;

  @KnownFact(quantity)
  wind?: Known<Quantity>;

  @KnownFact(line)
  windFrom?: Known<string>;

  @KnownFact(line)
  visibility?: Known<string>;

  @KnownFact(line)
  light?: Known<string>;

  @KnownFact(quantity)
  airTemperature?: Known<Quantity>;

  @KnownFact(quantity)
  waterTemperature?: Known<Quantity>;

  @KnownFact(quantity)
  waterDepth?: Known<Quantity>;

  @KnownFact(line)
  current?: Known<string>;

  @KnownFact(line)
  traffic?: Known<string>;

  @KnownFact(text)
  hazards?: Known<string>;

  @KnownFact(text)
  forecastUsed?: Known<string>;
}

type RenterAnswer = NonNullable<CheckInSection['renterAnswer']>['value'];

const RENTER_ANSWERS: readonly RenterAnswer[] = ['agrees', 'disputes', 'refuses', 'absent'];

export class CheckInDto implements CheckInSection {
  @KnownFact(instant)
  departedAt?: Known<string>;

  @KnownFact(instant)
  returnedAt?: Known<string>;

  @Value(stamp)
  inspected?: Stamp;

  @Value(line)
  by?: string;

  @KnownFact(text)
  found?: Known<string>;

  @KnownFact(oneOf(RENTER_ANSWERS))
  renterAnswer?: Known<RenterAnswer>;

  @Value(text)
  renterWords?: string;

  @Value(line)
  signature?: string;
}
