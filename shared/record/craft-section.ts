import type { Known } from '../call/known.js';
import type { Ternary } from '../kernel/truth.js';
import type { VesselUse } from './incident-facts.js';
import type { Quantity } from './quantity-as-entered.js';
import type { MissedShot } from './shots.js';

/** One craft concerned, ours or another's, and what it was doing. */
export interface Craft {
  id: string;
  ours?: boolean;
  /** Id in the fleet, where it is ours. */
  fleetCraft?: string;
  /** What it is called at the dock: PWC 7. */
  name?: string;
  /** A term of 33 CFR 174.19(a)(11), such as personal watercraft or pontoon boat. */
  type?: Known<string>;
  use?: Known<VesselUse>;
  hullNumber?: Known<string>;
  registrationNumber?: Known<string>;
  stateOfNumber?: Known<string>;
  numbered?: Known<Ternary>;
  documented?: Known<Ternary>;
  /** Subject to inspection under 46 U.S.C. ch. 33. */
  inspected?: Known<Ternary>;
  motorized?: Known<Ternary>;
  passengersForHire?: Known<Ternary>;
  /** Signs of a bareboat rental, or of none: `CharterSigns` of the facts. */
  crewSupplied?: Known<Ternary>;
  ownerMayRefuseCrew?: Known<Ternary>;
  ownerAboard?: Known<Ternary>;
  renterPaysFuel?: Known<Ternary>;
  renterInsures?: Known<Ternary>;
  surveyedBeforeAndAfter?: Known<Ternary>;
  completeLoss?: Known<Ternary>;
  aboard?: Known<number>;
  beingTowed?: Known<number>;
  /** Make, model and year in one line. */
  makeAndModel?: Known<string>;
  length?: Known<Quantity>;
  colours?: string;
  ownerName?: string;
  ownerContact?: string;
  insurer?: string;
  /** Cruising, drifting, docking: as told. */
  operation?: Known<string>;
  activity?: Known<string>;
  speed?: Known<Quantity>;
  heading?: Known<string>;
  /** Speed limiter or mode, as it was set: learner, full. */
  powerSetting?: Known<string>;
  /** Without throttle a jet drive does not steer. */
  throttleInTurn?: Known<Ternary>;
  /** Gates of a deck. */
  gatesClosed?: Known<Ternary>;
  /** Somebody outside the rails or on the bow. */
  bowRiding?: Known<Ternary>;
  /** What it did, in words. */
  account?: Known<string>;
  /** Type and number of those used, or that none was (33 CFR 173.57(b)(16)). */
  fireExtinguishersUsed?: Known<string>;
  /** Kept as it was found: not started, not repaired. */
  keptAsFound?: Known<Ternary>;
  /** Pictures of the list that could not be taken. */
  notPhotographed?: MissedShot[];
}

export interface CraftSection {
  craft?: Craft[];
}
