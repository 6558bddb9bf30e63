import type { Ternary } from '../kernel/truth.js';

/**
 * What is known, and known not to be known, about one occurrence on the water: the input of a
 * determination. US dollars, metres, degrees (WGS 84), ISO 8601 instants with an offset. The published
 * schema is `forms/determination/incident-facts.schema.json`. An absent fact is unknown, unless the
 * schema names another default.
 */
export interface IncidentFacts {
  schemaVersion: 1;
  occurredAt: string;
  occurredUntil?: string | null;
  learnedAt?: string | null;
  place: Place;
  federalWaters?: Ternary;
  involvesVesselOrEquipment?: Ternary;
  /** First event first; empty: unknown. */
  casualtyTypes: string[];
  everyoneAccountedFor?: Ternary;
  operatorAbleToReport?: Ternary;
  oilSheen?: Ternary;
  bridgeStruck?: Ternary;
  /** Propulsion or steering was lost, so that the vessel handled worse (46 CFR 4.05-1(a)(3)). */
  propulsionOrSteeringLost?: Ternary;
  /** Something materially harmed a vessel's seaworthiness or fitness (46 CFR 4.05-1(a)(4)). */
  seaworthinessImpaired?: Ternary;
  vessels: Vessel[];
  peopleAssessment: Assessment;
  people: Person[];
  damageAssessment: Assessment;
  damage: DamageItem[];
  officerAtScene?: Ternary;
  officerFiledReport?: Ternary;
  emergencyServicesCalled?: Ternary;
  /** What people answered to the question whether it is a reportable occurrence, the oldest first. */
  scopeAnswers?: ScopeAnswer[];
}

/** A person's answer, with its reason and who gave it: nothing else takes an occurrence out of accident reports. */
export interface ScopeAnswer {
  /** Id of the aid that asks. */
  aid: string;
  /** For whose law, such as `us` and `us-tx`. */
  jurisdictions: string[];
  answer: 'reportable' | 'not-reportable';
  reason: string;
  by: string;
  /** RFC 3339. */
  at: string;
}

export type Assessment = 'complete' | 'partial' | 'not-yet';

export interface Place {
  latitude?: number;
  longitude?: number;
  /** USPS codes. */
  states?: string[];
  /** IANA zone. */
  timeZone?: string;
  description?: string;
  accuracyM?: number;
}

export type VesselUse =
  'rental' | 'recreational' | 'passenger-for-hire' | 'staff-operated' | 'other-commercial';

export interface Vessel {
  id: string;
  use: VesselUse;
  ours?: boolean;
  numbered?: Ternary;
  inspected?: Ternary;
  completeLoss?: Ternary;
  aboard?: number;
  stateOfNumber?: string;
  motorized?: Ternary;
  documented?: Ternary;
  passengersForHire?: Ternary;
  /** Signs of a bareboat rental, or of none. */
  charter?: CharterSigns;
  /** What was agreed with the renter. */
  rental?: RentalFacts;
}

/** Coast Guard guidance weighs these; none of them decides. */
export interface CharterSigns {
  crewSupplied?: Ternary;
  ownerMayRefuseCrew?: Ternary;
  ownerAboard?: Ternary;
  renterPaysFuel?: Ternary;
  renterInsures?: Ternary;
  surveyedBeforeAndAfter?: Ternary;
}

export interface RentalFacts {
  dueBackAt?: string;
  returnedAt?: string;
}

export type PersonOutcome = 'unhurt' | 'injured' | 'died' | 'missing' | 'not-back' | 'unknown';
export type Care = 'none' | 'first-aid' | 'beyond-first-aid' | 'unknown';

export interface Person {
  id: string;
  role?: 'operator' | 'passenger' | 'towed' | 'in-water' | 'ashore' | 'unknown';
  vessel?: string;
  employee?: Ternary;
  outcome: PersonOutcome;
  /** The care needed, given or not. */
  care?: Care;
  treatments?: string[];
  inpatient?: Ternary;
  lostConsciousness?: Ternary;
  carriedFromScene?: Ternary;
  incapacitatedHours?: number | 'unknown';
  diedAt?: string;
  /** When last seen. */
  missingSince?: string;
  /** For not-back: do the circumstances indicate death or injury? */
  signsOfHarm?: Ternary;
  amputation?: Ternary;
  eyeLoss?: Ternary;
  admittedAt?: string;
  /** When the limb or the eye was lost; absent: in the occurrence. */
  lostAt?: string;
  /** When the business learned of the death, admission or loss, and that work caused it. */
  harmLearnedAt?: string;
}

export type DamagedThing =
  | 'vessel'
  | 'vessel-equipment'
  | 'boating-infrastructure'
  | 'navigation-aid'
  | 'other-property'
  | 'personal-property';

export interface DamageItem {
  id: string;
  of: DamagedThing;
  vessel?: string;
  /** Whose property, for rules that count one person's loss. */
  owner?: string;
  basis?: 'guess' | 'estimate' | 'quote' | 'invoice';
  /** US dollars with at most two decimals. */
  amount: 'unknown' | number | { low: number; high: number };
}
