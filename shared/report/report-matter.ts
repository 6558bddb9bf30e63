import type { IncidentRecord, SectionName } from '../record/incident-record.js';
import type { ItemState, ReportHead } from './filled-report.js';
import type { ReportNotes } from './report-notes.js';

/** What a craft of ours is, as the fleet knew it when it happened. */
export type FleetDetails = Readonly<Record<string, unknown>>;

/** Everything that one report is filled from. */
export interface ReportMatter {
  readonly head: ReportHead;
  readonly record: IncidentRecord;
  readonly notes: ReportNotes;
  /** By id of the craft in the record. */
  readonly fleet: Readonly<Record<string, FleetDetails>>;
  /** IANA zone, or fixed offset, of the place. */
  readonly timeZone: string;
}

/** One of the things that a part is asked of. */
export interface Subject {
  readonly name: string | null;
  readonly section: SectionName | null;
  readonly path: string;
  readonly value: object;
  readonly fleet?: FleetDetails;
}

/** What is said in place of, or beside, a list of subjects: that it is empty, or that it may not be whole. */
export interface Remark {
  readonly name: string | null;
  readonly state: ItemState;
  readonly text: string;
  readonly section: SectionName | null;
  readonly path: string;
}

export interface Subjects {
  readonly subjects: readonly Subject[];
  readonly remarks: readonly Remark[];
}
