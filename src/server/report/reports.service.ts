import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { canonicalBytes } from '../../../shared/proof/canonical-json.js';
import { sha256Hex } from '../../../shared/proof/sha256-hex.js';
import { listLacks } from '../../../shared/report/list-lacks.js';
import { OPINION_CAUTION, REPORT_CAUTIONS } from '../../../shared/report/report-cautions.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { refuse } from '../platform/http/refuse.js';
import { IncidentAccess, ServiceSections } from '../record/record.api.js';
import { notesOf, ReportBook } from './report-book.js';
import { type IncidentReports, type ReadReport, ReportReader } from './report-reader.js';
import { drawWorksheet } from './worksheet/draw-worksheet.js';

/** The official reports of an incident, for whoever may read them. */
@Injectable()
export class ReportsService {
  constructor(
    private readonly reader: ReportReader,
    private readonly book: ReportBook,
    private readonly access: IncidentAccess,
    private readonly sections: ServiceSections,
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
    await this.notePrint(id, found, all.asOf, actor);
    const { reference } = all.record.incident;
    return {
      name: `report-${reference}-${reportId.replace('.', '-')}.pdf`,
      content: drawWorksheet({
        reference,
        ...found,
        timeZone: all.timeZone,
        asOf: all.asOf,
        printedBy: actor.personName,
        doubts: this.reader.form.doubts,
      }),
    };
  }

  private async notePrint(
    incidentId: string,
    { report }: ReadReport,
    at: string,
    actor: PersonActor,
  ): Promise<void> {
    const content = sha256Hex(canonicalBytes(report));
    await this.sections.run(async () => {
      const book = await this.book.read(incidentId);
      const before = book.printed.some(
        (one) => one.report === report.id && one.content === content && one.by.account === actor.accountId,
      );
      if (before) return;
      const by = { account: actor.accountId, person: actor.personName, role: actor.role };
      const printed = { id: randomUUID(), report: report.id, by, at, content };
      await this.book.write(incidentId, { ...book, printed: [...book.printed, printed] }, actor);
    });
  }

  private view({ record, timeZone, asOf, book }: IncidentReports, { report, duties }: ReadReport) {
    const { citation, readOn, doubts } = this.reader.form;
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
