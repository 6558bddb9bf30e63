import type { Known } from '../call/known.js';
import type { Ternary } from '../kernel/truth.js';
import type { AccountSection } from '../record/account-sections.js';
import { KnownFact } from './record-members.js';
import { casualtyTypes, lines, ternary, text } from './record-values.js';

export class AccountDto implements AccountSection {
  @KnownFact(casualtyTypes)
  casualtyTypes?: Known<string[]>;

  @KnownFact(ternary)
  involvesVesselOrEquipment?: Known<Ternary>;

  @KnownFact(ternary)
  oilSheen?: Known<Ternary>;

  @KnownFact(ternary)
  bridgeStruck?: Known<Ternary>;

  @KnownFact(ternary)
  propulsionOrSteeringLost?: Known<Ternary>;

  @KnownFact(ternary)
  seaworthinessImpaired?: Known<Ternary>;

  @KnownFact(text)
  whatHappened?: Known<string>;

  @KnownFact(text)
  equipmentFailures?: Known<string>;

  @KnownFact(lines)
  contributingFactors?: Known<string[]>;
}
