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
  vessels: Vessel[];
  peopleAssessment: Assessment;
  people: Person[];
  damageAssessment: Assessment;
  damage: DamageItem[];
  officerAtScene?: Ternary;
  officerFiledReport?: Ternary;
  emergencyServicesCalled?: Ternary;
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
