import { Injectable } from '@nestjs/common';
import type { NotKnown, Opinion, ReportNotes } from '../../../shared/report/report-notes.js';
import type { ReportNotesDto } from '../../../shared/wire/report-requests.dto.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { assertFresh } from '../platform/http/entity-tag.js';
import { refuse } from '../platform/http/refuse.js';
import { IncidentAccess, ServiceSections } from '../record/record.api.js';
import { type KeptNotes, notesOf, ReportBook } from './report-book.js';
import { ReportReader } from './report-reader.js';
import { reportOf } from './reports.service.js';

/** Who wrote something, and when. */
interface Mark {
  readonly by: string;
  /** RFC 3339. */
  readonly at: string;
}

/** What a manager writes on a report that is no fact of the record: who submits it, an opinion, what cannot be known. */
@Injectable()
export class ReportNotesService {
  constructor(
    private readonly reader: ReportReader,
    private readonly book: ReportBook,
    private readonly access: IncidentAccess,
    private readonly sections: ServiceSections,
    private readonly clock: Clock,
  ) {}

  async read(incidentId: string, reportId: string, actor: PersonActor): Promise<KeptNotes> {
    const { id } = await this.access.read(incidentId, actor);
    const all = await this.reader.read(id);
    return notesOf(all.book.notes, reportOf(all, reportId).report.id);
  }

  /**
   * Writes the notes of a report anew, on the version that was read.
   * @throws ProblemException 409 for the opinion of a customer who drove: nobody writes it for them
   * @throws ProblemException 422 for an item that the report does not have
   */
  write(
    incidentId: string,
    reportId: string,
    sent: ReportNotesDto,
    ifMatch: string | undefined,
    actor: PersonActor,
  ): Promise<KeptNotes> {
    return this.sections.run(async () => {
      const { id } = await this.access.find(incidentId, actor);
      const all = await this.reader.read(id);
      const { report } = reportOf(all, reportId);
      const before = notesOf(all.book.notes, report.id);
      assertFresh(ifMatch, before, sent);
      if (report.customerWrites && sent.opinion !== undefined) {
        refuse(
          409,
          'The opinion in a customer’s own report is the customer’s: nobody writes it for them.',
          '/opinion',
        );
      }
      const known = [...report.items, ...report.stateItems].map((item) => item.id);
      sent.notKnown?.forEach((one, index) => {
        if (!known.includes(one.id)) refuse(422, 'The report has no such item.', `/notKnown/${index}/id`);
      });
      const mark = { by: actor.personName, at: this.clock.now() };
      const after = { ...amended(before, sent, mark), id: report.id, version: before.version + 1 };
      const notes = [...all.book.notes.filter((one) => one.id !== report.id), after];
      await this.book.write(id, { ...all.book, notes }, actor);
      return after;
    });
  }
}

/** What was there before keeps who wrote it. */
function amended(
  before: ReportNotes,
  { submitter, opinion, notKnown }: ReportNotesDto,
  mark: Mark,
): ReportNotes {
  return {
    ...(submitter === undefined ? {} : { submitter }),
    ...(opinion === undefined ? {} : { opinion: opinionOf(before.opinion, opinion, mark) }),
    ...(notKnown === undefined
      ? {}
      : { notKnown: notKnown.map((one): NotKnown => notKnownOf(before.notKnown, one, mark)) }),
  };
}

function opinionOf(
  before: Opinion | undefined,
  opinion: Pick<Opinion, 'text' | 'alcoholOrDrugs'>,
  mark: Mark,
): Opinion {
  const same = before?.text === opinion.text && before.alcoholOrDrugs === opinion.alcoholOrDrugs;
  return same ? before : { ...opinion, ...mark };
}

function notKnownOf(
  before: readonly NotKnown[] = [],
  one: Pick<NotKnown, 'id' | 'why'>,
  mark: Mark,
): NotKnown {
  return before.find(({ id, why }) => id === one.id && why === one.why) ?? { ...one, ...mark };
}
