import type { IncidentFacts } from '../record/incident-facts.js';

/**
 * One jurisdiction's accident-reporting law as dated data, or (with a `subject`) its law on one other matter that an
 * occurrence can touch. The files lie in `forms/law/` and `forms/duties/`, their schema is
 * `forms/law/rule-pack.schema.json`; every value says which text it came from and how sure that reading is.
 */
export interface RulePack {
  /** USPS code, or `US` for the federal rule. */
  jurisdiction: string;
  /** What a pack of `forms/duties/` is about, such as `workplace-injury`; absent for accident reports. */
  subject?: string;
  name: string;
  agency: string;
  /** How the triggers and amounts as a whole were read. */
  basis: PackBasis;
  /** Edition shown by the text that was read. */
  asOf: string | null;
  /** ISO date on which the text was read. */
  readOn: string;
  /** Local date from which the text is known to have been in force. */
  effectiveFrom: string;
  effectiveFromBasis: 'stated' | 'edition-date' | 'assumed';
  appliesTo: 'all-vessels' | 'motorized' | 'numbered' | 'federal-scope' | OtherScope | 'unknown';
  excludes: VesselExclusion[];
  personalProperty: 'counts' | 'excluded' | 'unknown' | 'excluded-from-2024';
  officerReportExcuses: 'yes' | 'no' | 'unknown';
  reportConfidential: 'yes' | 'no' | 'unknown';
  /** The law is known to ask no written report of private people. */
  noWrittenReport: boolean;
  /** The written accident report; null when the reading found none or nothing was read. */
  report: DutyRule | null;
  /** Notices, each a duty of its own. */
  notices: NoticeRule[];
  liveryDuties: LiveryDuty[];
  /** What may take an occurrence out of accident reports: shown to people, and never applied by itself. */
  aids?: ScopeAid[];
  citations: Citation[];
  doubts: string[];
  /** Days that business days skip, each with its source. */
  holidays: { date: string; source: string }[];
  /** Only in a pack that this business has corrected. */
  corrections?: Correction[];
}

/** That somebody of this business read the law and found the pack to say something else. */
export interface Correction {
  /** ISO date. */
  on: string;
  by: string;
  citation: string;
  note: string;
}

export type ReadingBasis = 'read-primary' | 'read-agency' | 'read-secondary' | 'memory' | 'superseded';
export type PackBasis = Exclude<ReadingBasis, 'superseded'> | 'not-read';
export type VesselExclusion = 'inspected' | 'documented';
/**
 * Whom a pack on another matter reaches: the business as an employer, whatever the craft; every vessel on waters of the
 * United States; vessels of the commercial route (46 CFR part 4); craft that the business rents out.
 */
export type OtherScope = 'employer' | 'federal-waters' | 'commercial-service' | 'rented-out';

export interface DutyRule {
  triggers: Trigger[];
  limits: Limit[];
  to: string;
  who: ReporterRule[];
  whoNote: string;
  /** Where the text names somebody beside the operator, when that place is known exactly. */
  whoCitation?: string;
}

export interface NoticeRule extends DutyRule {
  /** Last part of the duty's id. */
  id: string;
  /** The duty's kind in a determination. */
  kind: 'immediate-notice' | 'notice' | 'owner-report' | 'death-or-disappearance-notice' | OtherKind;
  /** What the facts must speak of for the duty to be determined at all; only in a pack on another matter. */
  raisedBy?: Occasion[];
  /** A number that takes it at any hour, where the law has it told by telephone. */
  telephone?: { name: string; number: string };
  /** In words, when the notice is due only in some cases. */
  onlyWhen: string;
  /** The same as facts: `always`; null when only words say it, which is a question of law. */
  condition: NoticeCondition | null;
}

export type OtherKind =
  | 'workplace-injury-report'
  | 'oil-discharge-notice'
  | 'marine-casualty-notice'
  | 'marine-casualty-report'
  | 'chemical-test'
  | 'assistance-duty'
  | 'livery-duty';

/**
 * What calls a duty of another matter up. A fact that is stated as unknown does; one that nobody has stated does not,
 * and the determination says that it was not asked.
 */
export type Occasion = 'employee' | 'oil-sheen' | 'commercial-vessel' | 'vessels-met' | 'rental-told';

export type NoticeCondition =
  | { is: 'always' }
  | { is: 'fact'; fact: 'officerAtScene' | 'operatorAbleToReport'; equals: 'yes' | 'no' }
  | { is: 'vessel-use'; use: IncidentFacts['vessels'][number]['use'] }
  /** A vessel numbered by this state, in an occurrence outside its waters. */
  | { is: 'numbered-here-occurred-elsewhere' };

export type ReporterRule =
  | 'operator'
  | 'owner'
  | 'operator-or-owner'
  | 'owner-if-operator-cannot'
  | 'owner-if-no-operator'
  | 'anyone-aboard'
  | 'anyone-aboard-if-operator-cannot'
  | 'other-person-aboard'
  | 'investigating-officer-if-neither-can'
  | 'employer'
  | 'person-in-charge'
  | 'livery';

export type PersonTest =
  | 'death'
  | 'disappearance'
  | 'any-injury'
  | 'needs-first-aid'
  | 'needs-beyond-first-aid'
  | 'receives-beyond-first-aid'
  | 'medical-attention'
  | 'serious-injury'
  | 'loss-of-consciousness'
  | 'carried-from-scene'
  | 'incapacity'
  | 'incapacity-past-the-day'
  | EmployeeTest
  /** Beyond first aid and, for who is engaged aboard, unfit for routine duties (46 CFR 4.05-1(a)(6)). */
  | 'injury-or-unfit';
/** Of employees of the business alone. */
export type EmployeeTest =
  'employee-death' | 'employee-admission' | 'employee-amputation' | 'employee-eye-loss';
export type DamageTest = 'damage-total' | 'damage-one-person' | 'damage-one-item' | 'damage-any';
/** Tests of one fact of the whole occurrence, or of what kind of casualty it was. */
export type EventTest =
  'oil-sheen' | 'grounding' | 'bridge-strike' | 'propulsion-or-steering-lost' | 'seaworthiness-impaired';
/** Tests of what was agreed with a renter. */
export type RentalTest = 'rental-in-waters' | 'overdue';
/** Tests that no fact can answer: shown as remarks, never triggers. */
export type RemarkTest = 'theft-or-vandalism' | 'vessel-disappears' | 'ask-counsel' | 'other';
export type TestName =
  | PersonTest
  | DamageTest
  | EventTest
  | RentalTest
  | 'complete-loss'
  | 'any-collision-or-casualty'
  | RemarkTest;

export type Comparison = 'more-than' | 'at-least';

export interface Trigger {
  test: TestName;
  /** Wording departures and exclusions. */
  note: string;
  /** When this trigger rests on weaker text than the pack as a whole. */
  basis?: ReadingBasis;
  /** For `incapacity`, and for `overdue` past the agreed return: the hours that the text names. */
  hours?: number;
  /** For an employee's harm: only within that many hours of the occurrence. */
  withinHours?: number;
  comparison?: Comparison;
  /** For damage tests with an amount: one reading for each differing source, the best-based first. */
  readings?: AmountReading[];
  /** Exact place in the law, when the trigger has one of its own. */
  citation?: string;
}

export interface AmountReading {
  amountUsd: number;
  comparison: Comparison;
  basis: ReadingBasis;
  source: string;
  asOf: string | null;
}

export type LimitTime =
  { hours: number } | { days: number; dayKind: 'plain' | 'business' } | { immediate: true };

export interface Limit {
  tests: TestName[];
  /** Null: the text read states no time. */
  time: LimitTime | null;
  /**
   * `event-known`: the death, admission or loss itself, or the moment the business learned of it where that was later.
   * `agreed-return`: when a rented craft was due back.
   */
  from: 'occurrence' | 'death' | 'knowledge' | 'event-known' | 'agreed-return' | 'unstated';
  note: string;
  /** The limit is only for deaths within that many hours of the occurrence. */
  deathWithinHours?: number;
  /** The limit is only for incapacity beyond that. */
  incapacityHours?: { hours: number; comparison: Comparison };
  /** Differing times by source. */
  readings?: { time: LimitTime | null; basis: ReadingBasis; source: string; asOf: string | null }[];
  citation?: string;
}

/** A question whether it is a reportable occurrence at all, with what a source says of it. */
export interface ScopeAid {
  id: string;
  question: string;
  /** What the source says. */
  text: string;
  source: string;
  basis: ReadingBasis;
  /** What was not read or is in conflict. */
  notKnown: string;
  /** When the question is shown. */
  suggestedBy: {
    casualtyTypes?: string[];
    vessels?: 'without-motor' | 'lost' | 'none-of-ours-numbered';
  };
}

/** What the law asks of a business that rents craft out, whether or not anything happens. */
export interface LiveryDuty {
  kind: string;
  /** Of records alone: how long they are kept at least; null where the text read does not say. */
  keptFor?: { days: number } | { months: number } | null;
  summary: string;
  citation: string;
  basis: ReadingBasis;
}

export interface Citation {
  section: string;
  url: string;
  kind: 'statute' | 'regulation' | 'agency-page' | 'secondary';
}
