import type { Ternary } from '../kernel/truth.js';

/** Who submits a report. */
export interface Submitter {
  name?: string;
  address?: string;
  phone?: string;
}

/** That somebody looked into an item and that it cannot be known, or not now. */
export interface NotKnown {
  /** Of the item: `16`, `WI gear`. */
  id: string;
  why: string;
  by: string;
  /** RFC 3339. */
  at: string;
}

/** A manager's opinion of the cause. Facts are for the record; this is for whoever signs the report. */
export interface Opinion {
  text: string;
  alcoholOrDrugs: Ternary;
  by: string;
  /** RFC 3339. */
  at: string;
}

/** What a report holds beside the record, of one vessel and reporter. */
export interface ReportNotes {
  submitter?: Submitter;
  opinion?: Opinion;
  notKnown?: NotKnown[];
}
