import { Injectable } from '@nestjs/common';
import { listLacks } from '../../../shared/report/list-lacks.js';
import { OPINION_CAUTION, REPORT_CAUTIONS } from '../../../shared/report/report-cautions.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { refuse } from '../platform/http/refuse.js';
import { IncidentAccess } from '../record/record.api.js';
import { PrintLog } from './print-log.js';
import { notesOf } from './report-book.js';
import { ReportForms } from './report-forms.js';
import { type IncidentReports, type ReadReport, ReportReader } from './report-reader.js';
import { drawWorksheet } from './worksheet/draw-worksheet.js';

/** The official reports of an incident, for whoever may read them. */
@Injectable()
export class ReportsService {
  constructor(
    private readonly forms: ReportForms,
    private readonly reader: ReportReader,
    private readonly prints: PrintLog,
    private readonly access: IncidentAccess,
  ) {}

  /** One line a report: whose it is, how far it is filled in, which duties it answers. */
  async list(incidentId: string, actor: PersonActor) {
    const { id } = await this.access.read(incidentId, actor);
    const { asOf, reports } = await this.reader.read(id);
    return {
      asOf,
      items: reports.map(({ report, duties }) => {
        const { id: report_, craft, reporter, vessel, customerWrites, counts } = report;
        return { id: report_, craft, reporter, vessel, customerWrites, counts, duties };
      }),
    };
  }

  /** What the reports still lack, by the section of the record where it is written. */
  async lacks(incidentId: string, actor: PersonActor) {
    const { id } = await this.access.read(incidentId, actor);
    const { asOf, reports } = await this.reader.read(id);
    return { asOf, items: listLacks(reports.map(({ report }) => report)) };
  }

  async read(incidentId: string, reportId: string, actor: PersonActor) {
    const { id } = await this.access.read(incidentId, actor);
    const all = await this.reader.read(id);
    return this.view(all, reportOf(all, reportId));
  }

  /**
   * The worksheet as PDF. Who printed which content is kept with the incident, once for each content and person: paper
   * leaves the house.
   */
  async worksheet(incidentId: string, reportId: string, actor: PersonActor) {
    const { id } = await this.access.read(incidentId, actor);
    const all = await this.reader.read(id);
    const found = reportOf(all, reportId);
    await this.prints.note(
      id,
      { report: reportId, paper: 'worksheet', content: found.report, at: all.asOf },
      actor,
    );
    const { reference } = all.record.incident;
    return {
      name: `report-${reference}-${reportId.replace('.', '-')}.pdf`,
      content: drawWorksheet({
        reference,
        ...found,
        timeZone: all.timeZone,
        asOf: all.asOf,
        printedBy: actor.personName,
        doubts: this.forms.report.doubts,
      }),
    };
  }

  private view({ record, timeZone, asOf, book }: IncidentReports, { report, duties }: ReadReport) {
    const { citation, readOn, doubts } = this.forms.report;
    return {
      ...report,
      reference: record.incident.reference,
      asOf,
      timeZone,
      citation,
      readOn,
      doubts,
      duties,
      cautions: REPORT_CAUTIONS,
      opinionCaution: OPINION_CAUTION,
      notesVersion: notesOf(book.notes, report.id).version,
      printed: book.printed.filter((one) => one.report === report.id),
    };
  }
}

/** @throws ProblemException 404 naming the reports that there are */
export function reportOf({ reports }: IncidentReports, id: string): ReadReport {
  const ids = reports.map(({ report }) => report.id).join(', ');
  return (
    reports.find(({ report }) => report.id === id) ??
    refuse(404, `There is no such report. Those of this incident are ${ids}.`)
  );
}
