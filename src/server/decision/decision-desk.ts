import { Injectable } from '@nestjs/common';
import type { Decision, LegalCall, SignedBy } from '../../../shared/decision/decision.js';
import type { Filing } from '../../../shared/decision/filing.js';
import { followReport } from '../../../shared/decision/follow-report.js';
import { judgeFiling } from '../../../shared/decision/judge-filing.js';
import { judgeSigning } from '../../../shared/decision/judge-signing.js';
import { operatorChange, type OperatorNotice } from '../../../shared/decision/operator-notice.js';
import { findReport, keyOf, type OwedReport } from '../../../shared/decision/owed-report.js';
import { reopenForOperator } from '../../../shared/decision/reopen-reports.js';
import { OperatorNoticeDto, readFiling, readLegalCall } from '../../../shared/wire/decision-requests.dto.js';
import { readSigning } from '../../../shared/wire/decision-signing.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { Determinations, type StoredDetermination } from '../determination/determination.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { IncidentAccess, ServiceSections } from '../record/record.api.js';
import { DutyStatesRepository } from './database/duty-states.repository.js';
import { DecisionBooks, type IncidentBook } from './decision-books.js';
import { Decisions } from './decisions.js';
import { DecisionSettings } from './decision-settings.js';
import { dayThere, rowOf } from './duty-views.js';
import { reportsWith } from './incident-reports.js';
import { refuseAsItStands } from './refuse-as-it-stands.js';

/** An incident with everything that a decision about it rests on. */
interface Matter {
  readonly incidentId: string;
  readonly stored: StoredDetermination;
  readonly book: IncidentBook;
  readonly reports: readonly OwedReport[];
  /** RFC 3339. */
  readonly now: string;
}

type Made = Decision | Filing | OperatorNotice | LegalCall;
type Added<T extends Made> = (matter: Matter, mark: { id: string; by: SignedBy }) => Promise<T>;

/** Where people sign, record filings, and note what they told the operator and what the agency told them. */
@Injectable()
export class DecisionDesk {
  constructor(
    private readonly decisions: Decisions,
    private readonly determinations: Determinations,
    private readonly books: DecisionBooks,
    private readonly states: DutyStatesRepository,
    private readonly sections: ServiceSections,
    private readonly access: IncidentAccess,
    private readonly createOnce: CreateOnce,
    private readonly settings: DecisionSettings,
    private readonly clock: Clock,
  ) {}

  /** @throws ProblemException 409 with every reason why it may not be signed as the duty stands */
  sign(incidentId: string, body: unknown, key: string | undefined, actor: PersonActor) {
    const { key: named, determination, signing } = readInput(readSigning(body));
    return this.once('decision', incidentId, body, key, actor, async (matter, { id, by }) => {
      const { stored, book, reports, now } = matter;
      if (stored.sequence !== determination) {
        refuse(
          409,
          'It was determined again meanwhile: read what stands now, then sign on that.',
          '/determination',
        );
      }
      const report = findReport(reports, named) ?? refuse(422, 'No such report stands now.', '/duty');
      const { reopenings, filings } = followReport(report, reports, book);
      const row = rowOf(await this.states.of(incidentId), report);
      refuseAsItStands(
        judgeSigning({
          report,
          signing,
          filed: filings.length > 0,
          calls: book.legalCalls,
          changedAt: row?.changedAt ?? stored.madeAt,
          now: Date.parse(now),
          today: dayThere(stored, now),
          rules: this.settings,
        }).map((refusal) => ({ pointer: '', ...refusal })),
      );
      const answers = reopenings.at(-1)?.id;
      const decision: Decision = {
        id,
        ...keyOf(report),
        ...signing,
        determination,
        signedAt: now,
        by,
        ...(answers !== undefined && { answers }),
      };
      await this.decisions.add(incidentId, stored, { decisions: [decision] }, actor);
      return decision;
    });
  }

  /** @throws ProblemException 409 with every reason why it cannot stand for what it names */
  file(incidentId: string, body: unknown, key: string | undefined, actor: PersonActor) {
    const details = readInput(readFiling(body));
    return this.once('filing', incidentId, body, key, actor, async (matter, { id, by }) => {
      const { stored, book, reports, now } = matter;
      const { facts, determination } = stored;
      refuseAsItStands(
        judgeFiling({
          filing: details,
          reports,
          facts,
          states: determination.states,
          filings: book.filings,
          now: Date.parse(now),
        }),
      );
      const filing: Filing = { ...details, id, by, recordedAt: now };
      await this.decisions.add(incidentId, stored, { filings: [filing] }, actor);
      return filing;
    });
  }

  noteOperator(incidentId: string, body: unknown, key: string | undefined, actor: PersonActor) {
    const details = readInput(readRecordInput(OperatorNoticeDto, body));
    return this.once('operator-notice', incidentId, body, key, actor, async (matter, { id, by }) => {
      const { stored, book, reports, now } = matter;
      refuseTimeToCome(details.at, now);
      const vessel = craftMeant(details.vessel ?? null, reports);
      const notice: OperatorNotice = { ...details, vessel, id, by, recordedAt: now };
      const before = book.operatorNotices.filter((one) => one.vessel === vessel);
      const change = operatorChange(before, notice);
      const reopenings = change === null ? [] : reopenForOperator(change, vessel, reports, book);
      await this.decisions.add(incidentId, stored, { operatorNotices: [notice], reopenings }, actor);
      return notice;
    });
  }

  logCall(incidentId: string, body: unknown, key: string | undefined, actor: PersonActor) {
    const details = readInput(readLegalCall(body));
    return this.once('legal-call', incidentId, body, key, actor, async (matter, { id, by }) => {
      const { stored, reports, now } = matter;
      refuseTimeToCome(details.at, now);
      details.duties.forEach((duty, index) => {
        if (!reports.some((report) => report.duty.id === duty)) {
          refuse(422, 'No such duty stands now.', `/duties/${index}`);
        }
      });
      const call: LegalCall = { ...details, id, by, recordedAt: now };
      await this.decisions.add(incidentId, stored, { legalCalls: [call] }, actor);
      return call;
    });
  }

  /** Adds what a retry never adds twice, and gives it as it was written. */
  private async once<T extends Made>(
    operation: string,
    incidentId: string,
    body: unknown,
    header: string | undefined,
    actor: PersonActor,
    add: Added<T>,
  ): Promise<T & { version: number }> {
    const request = { operation, key: readIdempotencyKey(header), body: { incidentId, body } };
    const by = { account: actor.accountId, person: actor.personName, role: actor.role };
    const { id } = await this.sections.run(() =>
      this.createOnce.run(request, async (made) => {
        await add(await this.matter(incidentId, actor), { id: made, by });
      }),
    );
    const { decisions, filings, operatorNotices, legalCalls } = await this.books.read(incidentId);
    const found = [...decisions, ...filings, ...operatorNotices, ...legalCalls].find((one) => one.id === id);
    return { ...((found as T | undefined) ?? refuse(404, 'There is nothing at this address.')), version: 1 };
  }

  private async matter(incidentId: string, actor: PersonActor): Promise<Matter> {
    await this.access.find(incidentId, actor);
    const stored =
      (await this.determinations.current(incidentId)) ??
      refuse(409, 'The incident has not been determined yet: change any fact of it first.');
    const book = await this.books.read(incidentId);
    return { incidentId, stored, book, reports: reportsWith(stored, book), now: this.clock.now() };
  }
}

function refuseTimeToCome(at: string, now: string): void {
  if (Date.parse(at) > Date.parse(now)) refuse(422, 'It is recorded once it has happened.', '/at');
}

/** The craft of the reports that a note is about; one that is not named is the only one there is. */
function craftMeant(vessel: string | null, reports: readonly OwedReport[]): string | null {
  const craft = [...new Set(reports.map(({ reporter }) => reporter.vessel))];
  if (vessel === null) return craft.length === 1 ? (craft[0] ?? null) : null;
  return craft.includes(vessel)
    ? vessel
    : refuse(422, 'Must be a craft of ours in this incident.', '/vessel');
}
