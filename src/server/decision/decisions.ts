import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { type ChangedReport, compareReports } from '../../../shared/decision/compare-reports.js';
import type { Reopening } from '../../../shared/decision/decision.js';
import { followReport, reportState, type ReportState } from '../../../shared/decision/follow-report.js';
import { findReport, keyOf, sameReport } from '../../../shared/decision/owed-report.js';
import { type NewReopening, reopenReports } from '../../../shared/decision/reopen-reports.js';
import type { IncidentRecord } from '../../../shared/record/incident-record.js';
import type { Page } from '../../../shared/wire/page-query.dto.js';
import type { Actor } from '../accounts/accounts.api.js';
import {
  type DeterminationChange,
  Determinations,
  type StoredDetermination,
} from '../determination/determination.api.js';
import { Clock } from '../platform/clock.js';
import { type DeletionStop, DeletionStops } from '../record/record.api.js';
import { pageOf, type PageRequest } from '../platform/http/cursor.js';
import type { DutyStateRow } from './database/duty-state.row.js';
import { DutyStatesRepository } from './database/duty-states.repository.js';
import { type BookAddition, DecisionBooks, type IncidentBook } from './decision-books.js';
import { DecisionSettings } from './decision-settings.js';
import { dutyStateOf } from './duty-state-of.js';
import { type DutyView, rowOf, viewDuties } from './duty-views.js';
import { reportsIn, reportsWith } from './incident-reports.js';

/** What was signed or filed on an incident and no longer stands as it was. */
export interface DecisionsReopened {
  readonly incidentId: string;
  /** Sequence of the determination from which on it is so. */
  readonly determination: number;
  readonly reopenings: readonly Reopening[];
  /** Who changed the facts. */
  readonly actor: Actor;
}

/** How the reports of an incident stand after a change, with what that was read from. */
export interface DecisionsChanged {
  readonly incidentId: string;
  readonly stored: StoredDetermination;
  readonly duties: readonly DutyView[];
  /** Where the change came from the record: as it then is. */
  readonly record?: IncidentRecord;
  readonly actor: Actor;
}

/** A report on which something is still to be done. */
export interface OpenDuty extends Pick<
  DutyStateRow,
  'incidentId' | 'duty' | 'outcome' | 'immediate' | 'dueAt' | 'decision' | 'waitUntil'
> {
  readonly vessel: string | null;
  readonly state: ReportState;
}

/** Decisions about the duties of incidents, for other modules of the service. */
@Injectable()
export class Decisions {
  private readonly reopened: ((event: DecisionsReopened) => Promise<void>)[] = [];
  private readonly changed: ((event: DecisionsChanged) => Promise<void>)[] = [];

  constructor(
    private readonly determinations: Determinations,
    private readonly books: DecisionBooks,
    private readonly states: DutyStatesRepository,
    private readonly settings: DecisionSettings,
    private readonly clock: Clock,
    stops: DeletionStops,
  ) {
    stops.onAsked(async ({ incidentId }) => (incidentId === null ? [] : this.stopsOf(incidentId)));
    determinations.onChange((change) => this.bringForward(change));
  }

  /** Told within the unit of work in which something reopens, once for all that reopens together. */
  onReopened(listener: (event: DecisionsReopened) => Promise<void>): void {
    this.reopened.push(listener);
  }

  /** Told within the unit of work in which the duties of an incident, or what was signed or filed on them, changed. */
  onChange(listener: (event: DecisionsChanged) => Promise<void>): void {
    this.changed.push(listener);
  }

  /** The reports of an incident as they stand; none for one that was never determined. */
  async dutiesOf(incidentId: string): Promise<DutyView[]> {
    const stored = await this.determinations.current(incidentId);
    return stored === null ? [] : this.dutiesUnder(stored);
  }

  /** The same, for whoever has the latest determination at hand. */
  async dutiesUnder(stored: StoredDetermination): Promise<DutyView[]> {
    const book = await this.books.read(stored.incidentId);
    return this.view(stored, book, await this.states.of(stored.incidentId));
  }

  /** Reports on which something is still to be done, over all incidents, the earliest clock first. */
  async openDuties(request: PageRequest): Promise<Page<OpenDuty>> {
    const now = Date.parse(this.clock.now());
    const rows = await this.states.open(request);
    const { items, next } = pageOf(rows, request, ({ dueOrder, id }) => ({ sort: dueOrder, id }));
    return { items: items.map((row) => openDuty(row, now)), next };
  }

  /** Writes down what was signed, filed, noted or reopened, within `ServiceSections.run`, and tells of it. */
  async add(
    incidentId: string,
    stored: StoredDetermination,
    addition: Omit<BookAddition, 'reopenings'> & { readonly reopenings?: readonly NewReopening[] },
    actor: Actor,
  ): Promise<void> {
    const { reopenings = [], ...others } = addition;
    const written = this.dated(reopenings, stored);
    const kept = { ...others, ...(written.length > 0 && { reopenings: written }) };
    const book = await this.books.add(incidentId, kept, actor);
    const duties = await this.follow(incidentId, stored, book, []);
    await this.tell({ incidentId, stored, duties, actor }, written);
  }

  private async stopsOf(incidentId: string): Promise<DeletionStop[]> {
    const open = (await this.states.of(incidentId)).filter(({ settled }) => !settled);
    return open.map(({ id, duty }) => ({ by: 'report', id, words: `A report is not settled: ${duty}.` }));
  }

  private async bringForward({
    incidentId,
    before,
    after,
    record,
    actor,
  }: DeterminationChange): Promise<void> {
    const was = before === null ? [] : reportsIn(before);
    const now = reportsIn(after);
    const book = await this.books.read(incidentId);
    const reopenings = this.dated(reopenReports(was, now, book), after);
    const added = reopenings.length === 0 ? book : await this.books.add(incidentId, { reopenings }, actor);
    const duties = await this.follow(incidentId, after, added, compareReports(was, now));
    await this.tell({ incidentId, stored: after, duties, record, actor }, reopenings);
  }

  private dated(reopenings: readonly NewReopening[], { sequence }: StoredDetermination): Reopening[] {
    const at = this.clock.now();
    return reopenings.map((one) => ({ id: randomUUID(), at, determination: sequence, ...one }));
  }

  private view(stored: StoredDetermination, book: IncidentBook, rows: readonly DutyStateRow[]): DutyView[] {
    return viewDuties({ stored, book, rows, now: this.clock.now(), rules: this.settings });
  }

  /** Brings the list of how the reports of an incident stand forward, and gives them. */
  private async follow(
    incidentId: string,
    stored: StoredDetermination,
    book: IncidentBook,
    changes: readonly ChangedReport[],
  ): Promise<DutyView[]> {
    const reports = reportsWith(stored, book);
    const before = await this.states.of(incidentId);
    const now = reports.map((report) => {
      const unnamed = findReport(reports, { duty: report.duty.id, vessel: null }) === report;
      const former = before.find(({ duty, vessel }) => unnamed && duty === report.duty.id && vessel === '');
      return dutyStateOf({
        incidentId,
        report,
        standing: followReport(report, reports, book),
        before: rowOf(before, report) ?? former ?? null,
        changed: changes.some(({ key }) => sameReport(key, keyOf(report))),
        at: stored.madeAt,
      });
    });
    await this.states.replace(before, now);
    return this.view(stored, book, now);
  }

  private async tell(change: DecisionsChanged, reopenings: readonly Reopening[]): Promise<void> {
    const { incidentId, stored, actor } = change;
    if (reopenings.length > 0) {
      const event = { incidentId, determination: stored.sequence, reopenings, actor };
      for (const listener of this.reopened) await listener(event);
    }
    for (const listener of this.changed) await listener(change);
  }
}

function openDuty(row: DutyStateRow, now: number): OpenDuty {
  const { incidentId, duty, vessel, outcome, immediate, dueAt, decision, waitUntil } = row;
  const { overdueAfter, filed, supplementDue } = row;
  const marks = {
    outcome,
    filed,
    supplementDue,
    decision,
    overdueAfter: overdueAfter === null ? null : Date.parse(overdueAfter),
    waitUntil: waitUntil === null ? null : Date.parse(waitUntil),
  };
  const state = reportState(marks, now);
  return { incidentId, duty, vessel: vessel || null, outcome, immediate, dueAt, decision, waitUntil, state };
}
