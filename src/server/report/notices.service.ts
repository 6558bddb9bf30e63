import { Injectable } from '@nestjs/common';
import { composeNotice } from '../../../shared/report/compose-notice.js';
import { judgeNotice } from '../../../shared/report/judge-notice.js';
import {
  NOTICE_LANGUAGES,
  type NoticeLanguage,
  type RenterNotice,
} from '../../../shared/report/renter-notice.js';
import { whenItHappened } from '../../../shared/record/when-it-happened.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { ProblemException, problemOfStatus } from '../platform/http/problem.js';
import { readInput } from '../platform/http/read-input.js';
import { IncidentAccess } from '../record/record.api.js';
import { drawNotice } from './notice/draw-notice.js';
import { PrintLog } from './print-log.js';
import { ReportForms } from './report-forms.js';
import { type IncidentReports, ReportReader } from './report-reader.js';
import { reportOf } from './reports.service.js';

/** The notice to a customer who drove, for a person to print and hand over. The service sends none. */
@Injectable()
export class NoticesService {
  constructor(
    private readonly forms: ReportForms,
    private readonly reader: ReportReader,
    private readonly prints: PrintLog,
    private readonly access: IncidentAccess,
  ) {}

  /**
   * The notice in each language, with what to mind, and how to record that it was given.
   * @throws ProblemException 409 with the code of why none is given
   */
  async read(incidentId: string, reportId: string, actor: PersonActor) {
    const { id } = await this.access.read(incidentId, actor);
    const all = await this.reader.read(id);
    const { head, recipient, minds, notices } = this.compose(all, reportId);
    return {
      report: head.id,
      vessel: head.vessel,
      recipient,
      asOf: all.asOf,
      minds,
      notices,
      recordAt: `/api/incidents/${id}/operator-notices`,
    };
  }

  /** One page of it as PDF. */
  async page(incidentId: string, reportId: string, asked: unknown, actor: PersonActor) {
    const language = readLanguage(asked);
    const { id } = await this.access.read(incidentId, actor);
    const all = await this.reader.read(id);
    const { notices } = this.compose(all, reportId);
    const notice = notices.find((one) => one.language === language);
    if (notice === undefined) throw new Error(`forms/notice has no words in ${language}.`);
    await this.prints.note(id, { report: reportId, paper: 'notice', content: notice, at: all.asOf }, actor);
    const { reference } = all.record.incident;
    return {
      name: `notice-${reference}-${reportId.replace('.', '-')}-${language}.pdf`,
      content: drawNotice(notice, { reference, asOf: all.asOf }),
    };
  }

  private compose(all: IncidentReports, reportId: string) {
    const { report: head, duties } = reportOf(all, reportId);
    const judged = judgeNotice(all.record, head, duties);
    if (!judged.ok) refuseNotice(judged.code, judged.detail);
    const { recipient, name, minds } = judged;
    const matter = {
      recipient,
      name,
      vessel: head.vessel,
      reference: all.record.incident.reference,
      occurredAt: whenItHappened(all.record).occurredAt,
      timeZone: all.timeZone,
      duties,
    };
    const notices: RenterNotice[] = this.forms.notice.map((words) => composeNotice(words, matter));
    return { head, recipient, minds, notices };
  }
}

function readLanguage(asked: unknown): NoticeLanguage {
  const language = NOTICE_LANGUAGES.find((one) => one === (asked ?? 'en'));
  if (language !== undefined) return language;
  const errors = [{ pointer: '/language', detail: `Must be ${NOTICE_LANGUAGES.join(' or ')}.` }];
  return readInput<NoticeLanguage>({ ok: false, errors }, 'query');
}

function refuseNotice(code: string, detail: string): never {
  const error = { code, pointer: '', detail };
  throw new ProblemException({
    ...problemOfStatus(409),
    type: '/problems/no-notice',
    title: 'No notice is given',
    source: 'request',
    errors: [error],
  });
}
