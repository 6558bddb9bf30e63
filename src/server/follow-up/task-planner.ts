import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { OwedReport } from '../../../shared/decision/owed-report.js';
import { listOwedReports } from '../../../shared/decision/owed-report.js';
import { isConduct } from '../../../shared/determination/duty-kinds.js';
import { followUpZone } from '../../../shared/follow-up/follow-up-zone.js';
import { type PlannedTask, planTasks, type ReopenedReport } from '../../../shared/follow-up/plan-tasks.js';
import { reconcileTasks, type TaskChange } from '../../../shared/follow-up/reconcile-tasks.js';
import { listRentalRecords } from '../../../shared/law/list-rental-records.js';
import type { IncidentRecord } from '../../../shared/record/incident-record.js';
import type { RequestsSection } from '../../../shared/record/legal-request.js';
import type { Actor } from '../accounts/accounts.api.js';
import { Decisions, type DecisionsChanged, type DutyView } from '../decision/decision.api.js';
import { Determinations, Law, type StoredDetermination } from '../determination/determination.api.js';
import { Clock } from '../platform/clock.js';
import { RecordChanges, ServiceSections } from '../record/record.api.js';
import { ClaimsClocks } from './claims-clocks.service.js';
import type { TaskEventRow } from './database/task-event.row.js';
import type { TaskRow } from './database/task.row.js';
import { TasksRepository, UNDATED } from './database/tasks.repository.js';
import { FiledWork } from './filed-work.js';
import { FollowUpForms } from './follow-up-forms.js';
import { RequestWork } from './request-work.js';
import { taskEvent } from './task-events.js';

/** What the work of an incident is planned from. */
type Situation = DecisionsChanged & { readonly record: IncidentRecord };

/** Keeps the tasks of each incident what its record and its duties call for, in the unit of work that changed them. */
@Injectable()
export class TaskPlanner {
  constructor(
    private readonly tasks: TasksRepository,
    private readonly claims: ClaimsClocks,
    private readonly sections: ServiceSections,
    private readonly filed: FiledWork,
    private readonly asked: RequestWork,
    private readonly forms: FollowUpForms,
    private readonly law: Law,
    private readonly clock: Clock,
    decisions: Decisions,
    determinations: Determinations,
    changes: RecordChanges,
  ) {
    // Told of every determination, that of corrected law among them, and of what was signed, filed and reopened.
    decisions.onChange(async (change) => {
      const { incidentId, duties, actor } = change;
      const record = change.record ?? (await this.sections.record(incidentId));
      await this.bringForward({ ...change, record });
      await this.filed.complete(incidentId, duties, actor);
    });
    // What leaves the duties as they were may still call for work.
    determinations.onStanding(async (change) => {
      await this.bringForward({ ...change, duties: await decisions.dutiesUnder(change.stored) });
    });
    changes.onChange(async ({ incidentId, sections: written, actor, record }) => {
      if (!written.includes('requests')) return;
      const stored = await determinations.current(incidentId);
      if (stored === null) return determinations.bringForward(incidentId, actor);
      const duties = await decisions.dutiesUnder(stored);
      await this.bringForward({ incidentId, stored, record: await record(), duties, actor });
    });
  }

  /** Plans afresh, within a unit of work; nothing is written when the tasks are what is called for. */
  private async bringForward({ incidentId, stored, record, duties, actor }: Situation): Promise<void> {
    const { determination } = stored;
    const zone = followUpZone(determination.timeZone, record.incident.timeZone);
    const clocks = await this.claims.bringForward(incidentId, record, zone);
    const states = determination.states.map(({ state }) => state);
    const { requests = [] } = await this.sections.read<RequestsSection>(incidentId, 'requests');
    const planned = planTasks(
      {
        record,
        reports: reportsOf(stored),
        conduct: determination.duties.filter(isConduct),
        rentalRecords: listRentalRecords(this.law.packs, states),
        requests,
        reopened: reopenedAmong(duties),
        clocks,
        zone,
      },
      this.forms.tasks,
    );
    const rows = await this.tasks.ofIncident(incidentId);
    const made = rows.filter(({ template }) => template !== null);
    const kept = made.map(({ taskKey, ...row }) => ({ key: taskKey, ...row }));
    await this.write(incidentId, reconcileTasks(kept, planned), made, actor);
    await this.asked.complete(incidentId, requests, actor);
  }

  private async write(
    incidentId: string,
    changes: readonly TaskChange[],
    rows: readonly TaskRow[],
    actor: Actor,
  ): Promise<void> {
    const now = this.clock.now();
    const added: TaskRow[] = [];
    const events: TaskEventRow[] = [];
    for (const change of changes) {
      if (change.what === 'added') {
        const row = rowOf(randomUUID(), incidentId, change.round, change.task, now);
        added.push(row);
        events.push(
          taskEvent(row.id, 1, { kind: 'added', words: change.why, dueAfter: row.dueAt }, actor, now),
        );
        continue;
      }
      const key = change.what === 'superseded' ? change.key : change.task.key;
      const row = rows.find(({ taskKey, round }) => taskKey === key && round === change.round);
      if (row === undefined)
        throw new Error(`No task ${key} of ${incidentId} is there to be ${change.what}.`);
      await this.tasks.change({ ...changeOf(change), id: row.id, version: row.version + 1, updatedAt: now });
      const sequence = (await this.tasks.eventCount(row.id)) + 1;
      const due = change.what === 'due-moved' ? { dueBefore: row.dueAt, dueAfter: change.task.dueAt } : {};
      events.push(taskEvent(row.id, sequence, { kind: change.what, words: change.why, ...due }, actor, now));
    }
    await this.tasks.add(added);
    await this.tasks.addEvents(events);
  }
}

/** The reports that are ours by a determination; the law behind them matters to decisions alone. */
function reportsOf({ determination, facts }: StoredDetermination): OwedReport[] {
  return listOwedReports(determination, facts, () => null);
}

function reopenedAmong(duties: readonly DutyView[]): ReopenedReport[] {
  return duties.map(({ duty, vessel, reopenings }) => ({
    duty,
    vessel,
    changes: reopenings.flatMap(({ changes }) => changes.map(({ text }) => text.replace(/\.$/, ''))),
  }));
}

/** A task that is called for again is open, and whoever had it has it still. */
function changeOf(change: Exclude<TaskChange, { what: 'added' }>): Partial<TaskRow> {
  return change.what === 'superseded' ? { state: 'superseded' } : { state: 'open', ...wordsOf(change.task) };
}

/** What a plan decides about a task. */
function wordsOf(task: PlannedTask) {
  const { template, order, title, why, source, owner, dueAt, dueWhy, evidence, escalates, restsOn, duty } =
    task;
  return {
    template,
    taskOrder: order,
    title,
    why,
    source,
    owner,
    dueAt,
    dueOrder: dueAt ?? UNDATED,
    dueWhy,
    evidenceAsked: evidence,
    escalates,
    restsOn: [...restsOn],
    duty,
  };
}

function rowOf(id: string, incidentId: string, round: number, task: PlannedTask, now: string): TaskRow {
  return {
    id,
    incidentId,
    taskKey: task.key,
    round,
    ...wordsOf(task),
    assigneeId: null,
    state: 'open',
    acknowledgedAt: null,
    acknowledgedBy: null,
    version: 1,
    createdAt: now,
    updatedAt: now,
  };
}
