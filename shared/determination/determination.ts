import type { PackBasis, RulePack, ScopeAid } from '../law/rule-pack.js';
import type { ScopeAnswer } from '../record/incident-facts.js';
import type { Truth } from '../kernel/truth.js';

/**
 * Which reports and notices one occurrence calls for, under which law, by whom and by when. The published
 * schema is `forms/determination/determination.schema.json`.
 */
export interface Determination {
  schemaVersion: 1;
  source: string;
  /** IANA zone, or a fixed offset such as `-05:00`. */
  timeZone: string;
  states: CandidateState[];
  duties: Duty[];
  /** Facts that nobody has stated, as unknown or otherwise, and that could call a further duty up; absent in older ones. */
  notAsked?: UnaskedQuestion[];
  /** None of these applies by itself; absent in older ones. */
  aids?: ShownAid[];
}

/** A question whether it is reportable at all that the facts suggest, or that somebody answered. */
export interface ShownAid extends Omit<ScopeAid, 'suggestedBy'> {
  jurisdiction: string;
  answers: ScopeAnswer[];
}

export interface UnaskedQuestion extends Question {
  /** Id of the duty that it could call up. */
  duty: string;
}

export interface CandidateState {
  state: string;
  chosenBy: 'stated' | 'position-inside' | 'position-near-line';
  distanceToLineM: number | null;
}

export type Outcome = 'required' | 'not-required' | 'undetermined';

export interface Duty {
  id: string;
  jurisdiction: string;
  kind: string;
  outcome: Outcome;
  reasons: Reason[];
  questions: Question[];
  immediate: boolean;
  dueAt: string | null;
  dueAtIfRequired: string | null;
  dueBasis: string | null;
  authority: string | null;
  reporters: Reporter[];
  citations: string[];
  packBasis: PackBasis;
  /** The rule pack, where it is not the accident-report law of the jurisdiction: `US-OIL-DISCHARGE`. */
  pack?: string;
  /** A number that takes it at any hour, where the law has it told by telephone. */
  telephone?: Telephone;
  /** Of the federal accident report: with which states it may be filed. */
  filedWith?: Destination[];
  /** Of an accident report whose law was read: whether an officer's report stands in for the operator's. */
  officerReportExcuses?: RulePack['officerReportExcuses'];
  /** And whether the law keeps the filed report confidential. */
  reportConfidential?: RulePack['reportConfidential'];
}

/** One place with which a report may be filed. */
export interface Destination {
  vessel: string;
  /** USPS code; null while it is not known. */
  state: string | null;
  text: string;
  because: string;
}

export interface Telephone {
  name: string;
  number: string;
}

export interface Reason {
  trigger: string;
  value: Truth;
  text: string;
  citation?: string;
}

export interface Question {
  /** RFC 6901 pointer into the facts; null when the open point is one of law. */
  fact: string | null;
  text: string;
}

export interface Reporter {
  vessel: string | null;
  who:
    | 'operator'
    | 'owner'
    | 'operator-else-owner'
    | 'operator-or-owner'
    | 'employer'
    | 'person-in-charge'
    | 'anyone-aboard';
  text: string;
}
