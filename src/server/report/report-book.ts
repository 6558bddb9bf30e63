import { Injectable } from '@nestjs/common';
import type { ReportNotes } from '../../../shared/report/report-notes.js';
import type { SignedBy } from '../../../shared/decision/decision.js';
import type { Actor } from '../accounts/accounts.api.js';
import { ServiceSections } from '../record/record.api.js';

/** The notes of one report; version 0 while nobody has written any. */
export interface KeptNotes extends ReportNotes {
  /** Of the report, such as `c1.owner`. */
  id: string;
  version: number;
}

/** That a paper was made, and of what: the same content by the same person is listed once. */
export interface Printed {
  id: string;
  report: string;
  paper: 'worksheet' | 'notice';
  by: SignedBy;
  /** RFC 3339. */
  at: string;
  /** SHA-256 of what was printed, as canonical JSON. */
  content: string;
}

export interface ReportsSection {
  notes: KeptNotes[];
  printed: Printed[];
}

/** What is kept of the official reports of an incident, in the record's own log. */
@Injectable()
export class ReportBook {
  constructor(private readonly sections: ServiceSections) {}

  async read(incidentId: string): Promise<ReportsSection> {
    const { notes = [], printed = [] } = await this.sections.read<ReportsSection>(incidentId, 'reports');
    return { notes, printed };
  }

  /** Within `ServiceSections.run`. */
  write(incidentId: string, section: ReportsSection, actor: Actor): Promise<void> {
    return this.sections.write(incidentId, 'reports', section, actor);
  }
}

/** `notesOf([], 'c1.owner')` is `{ id: 'c1.owner', version: 0 }`. */
export function notesOf(notes: readonly KeptNotes[], report: string): KeptNotes {
  return notes.find(({ id }) => id === report) ?? { id: report, version: 0 };
}
