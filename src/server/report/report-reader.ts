import { Injectable } from '@nestjs/common';
import { followUpZone } from '../../../shared/follow-up/follow-up-zone.js';
import type { IncidentRecord } from '../../../shared/record/incident-record.js';
import { whenItHappened } from '../../../shared/record/when-it-happened.js';
import type { FilledReport } from '../../../shared/report/filled-report.js';
import { fillReport } from '../../../shared/report/fill-report.js';
import { listReports } from '../../../shared/report/list-reports.js';
import type { FleetDetails } from '../../../shared/report/report-matter.js';
import { Decisions } from '../decision/decision.api.js';
import { Determinations } from '../determination/determination.api.js';
import { Fleet } from '../fleet/fleet.api.js';
import { Clock } from '../platform/clock.js';
import { ServiceSections } from '../record/record.api.js';
import { dutiesFor, type ReportDuty } from './duties-for.js';
import { ReportForms } from './report-forms.js';
import { notesOf, ReportBook, type ReportsSection } from './report-book.js';

/** A report with the duties that it answers. */
export interface ReadReport {
  readonly report: FilledReport;
  readonly duties: readonly ReportDuty[];
}

/** The official reports of an incident as of one moment. */
export interface IncidentReports {
  readonly record: IncidentRecord;
  readonly timeZone: string;
  /** RFC 3339. */
  readonly asOf: string;
  readonly book: ReportsSection;
  readonly reports: readonly ReadReport[];
}

/** Fills in the official reports of an incident from everything that is known now. */
@Injectable()
export class ReportReader {
  constructor(
    private readonly forms: ReportForms,
    private readonly sections: ServiceSections,
    private readonly book: ReportBook,
    private readonly determinations: Determinations,
    private readonly decisions: Decisions,
    private readonly fleet: Fleet,
    private readonly clock: Clock,
  ) {}

  async read(incidentId: string): Promise<IncidentReports> {
    const asOf = this.clock.now();
    const record = await this.sections.record(incidentId);
    const book = await this.book.read(incidentId);
    const duties = await this.decisions.dutiesOf(incidentId);
    const stored = await this.determinations.current(incidentId);
    const timeZone = followUpZone(stored?.determination.timeZone, record.incident.timeZone);
    const fleet = await this.fleetOf(record, asOf);
    const reports = listReports(record).map((head) => {
      const notes = notesOf(book.notes, head.id);
      return {
        report: fillReport(this.forms.report, { head, record, notes, fleet, timeZone }),
        duties: dutiesFor(head, duties),
      };
    });
    return { record, timeZone, asOf, book, reports };
  }

  /** Each craft as the fleet knew it when it happened, or knows it now where it was entered only since. */
  private async fleetOf(record: IncidentRecord, now: string): Promise<Record<string, FleetDetails>> {
    const { occurredAt } = whenItHappened(record);
    const known: Record<string, FleetDetails> = {};
    for (const { id, fleetCraft } of record.sections.craft?.craft ?? []) {
      if (fleetCraft === undefined) continue;
      const details =
        (await this.fleet.craftAsOf(fleetCraft, occurredAt)) ?? (await this.fleet.craftAsOf(fleetCraft, now));
      if (details !== null) known[id] = details as FleetDetails;
    }
    return known;
  }
}
