import type { Known } from '../call/known.js';
import type { Ternary } from '../kernel/truth.js';
import type { Craft, CraftSection } from '../record/craft-section.js';
import type { VesselUse } from '../record/incident-facts.js';
import type { Quantity } from '../record/quantity-as-entered.js';
import { type MissedShot, type Shot, SHOTS } from '../record/shots.js';
import { Items, KnownFact, Needed, Value } from './record-members.js';
import { quantityOf } from './record-quantity.js';
import { count, id, line, oneOf, stateCode, ternary, text, yesOrNo } from './record-values.js';

const USES: readonly VesselUse[] = [
  'rental',
  'recreational',
  'passenger-for-hire',
  'staff-operated',
  'other-commercial',
];

class MissedShotDto implements MissedShot {
  @Needed(id)
  id: string;

  @Value(oneOf(SHOTS))
  shot?: Shot;

  @Value(text)
  reason?: string;
}

class CraftDto implements Craft {
  @Needed(id)
  id: string;

  @Value(yesOrNo)
  ours?: boolean;

  @Value(line)
  fleetCraft?: string;

  @Value(line)
  name?: string;

  @KnownFact(line)
  type?: Known<string>;

  @KnownFact(oneOf(USES))
  use?: Known<VesselUse>;

  @KnownFact(line)
  hullNumber?: Known<string>;

  @KnownFact(line)
  registrationNumber?: Known<string>;

  @KnownFact(stateCode)
  stateOfNumber?: Known<string>;

  @KnownFact(ternary)
  numbered?: Known<Ternary>;

  @KnownFact(ternary)
  documented?: Known<Ternary>;

  @KnownFact(ternary)
  inspected?: Known<Ternary>;

  @KnownFact(ternary)
  motorized?: Known<Ternary>;

  @KnownFact(ternary)
  passengersForHire?: Known<Ternary>;

  @KnownFact(ternary)
  crewSupplied?: Known<Ternary>;

  @KnownFact(ternary)
  ownerMayRefuseCrew?: Known<Ternary>;

  @KnownFact(ternary)
  ownerAboard?: Known<Ternary>;

  @KnownFact(ternary)
  renterPaysFuel?: Known<Ternary>;

  @KnownFact(ternary)
  renterInsures?: Known<Ternary>;

  @KnownFact(ternary)
  surveyedBeforeAndAfter?: Known<Ternary>;

  @KnownFact(ternary)
  completeLoss?: Known<Ternary>;

  @KnownFact(count)
  aboard?: Known<number>;

  @KnownFact(count)
  beingTowed?: Known<number>;

  @KnownFact(line)
  makeAndModel?: Known<string>;

  @KnownFact(quantityOf('length'))
  length?: Known<Quantity>;

  @Value(line)
  colours?: string;

  @Value(line)
  ownerName?: string;

  @Value(line)
  ownerContact?: string;

  @Value(line)
  insurer?: string;

  @KnownFact(line)
  operation?: Known<string>;

  @KnownFact(line)
  activity?: Known<string>;

  @KnownFact(quantityOf('speed'))
  speed?: Known<Quantity>;

  @KnownFact(line)
  heading?: Known<string>;

  @KnownFact(line)
  powerSetting?: Known<string>;

  @KnownFact(ternary)
  throttleInTurn?: Known<Ternary>;

  @KnownFact(ternary)
  gatesClosed?: Known<Ternary>;

  @KnownFact(ternary)
  bowRiding?: Known<Ternary>;

  @KnownFact(text)
  account?: Known<string>;

  @KnownFact(line)
  fireExtinguishersUsed?: Known<string>;

  @KnownFact(ternary)
  keptAsFound?: Known<Ternary>;

  @Items(() => MissedShotDto)
  notPhotographed?: MissedShotDto[];
}

export class CraftSectionDto implements CraftSection {
  @Items(() => CraftDto)
  craft?: CraftDto[];
}
