import { Injectable } from '@nestjs/common';
import { type DeletionStop, DeletionStops, ServiceSections } from '../record/record.api.js';
import type { TaskRow } from './database/task.row.js';
import { type TaskFilter, TasksRepository } from './database/tasks.repository.js';
import { NoticeAddresses, type NoticeAddress } from './notice-addresses.service.js';

/** An open task for a calendar or a digest. Titles that people wrote may say what happened: `reference` never does. */
export interface DueTask {
  readonly id: string;
  readonly incidentId: string;
  readonly reference: string;
  readonly title: string;
  /** Somebody wrote the title by hand. */
  readonly own: boolean;
  readonly owner: TaskRow['owner'];
  readonly assigneeId: string | null;
  /** UTC; null where the time is not known. */
  readonly dueAt: string | null;
  readonly overdue: boolean;
  readonly updatedAt: string;
}

/** A task as it is told to somebody who takes over the incident. */
export type TaskOfIncident = Pick<
  TaskRow,
  'title' | 'why' | 'source' | 'owner' | 'state' | 'dueAt' | 'createdAt' | 'updatedAt'
>;

const PART = 200;
const DAY_MS = 86_400_000;

/** Open work, for the modules that tell people of it. */
@Injectable()
export class FollowUp {
  constructor(
    private readonly tasks: TasksRepository,
    private readonly sections: ServiceSections,
    private readonly addresses: NoticeAddresses,
    stops: DeletionStops,
  ) {
    stops.onAsked(async ({ incidentId }) => (incidentId === null ? [] : this.stopsOf(incidentId)));
  }

  /** Open tasks that somebody has, the soonest first. */
  tasksOf(accountId: string, now: string): Promise<DueTask[]> {
    return this.all({ state: 'open', assigneeId: accountId }, now);
  }

  /** Open tasks of everybody and nobody that are overdue, due within a day, or due at a time that nobody knows. */
  dueAndOverdue(now: string): Promise<DueTask[]> {
    const dueBy = new Date(Date.parse(now) + DAY_MS).toISOString();
    return this.all({ state: 'open', dueBy }, now);
  }

  /** Every task of an incident, whatever became of it. */
  async tasksOfIncident(incidentId: string): Promise<TaskOfIncident[]> {
    const rows = await this.tasks.ofIncident(incidentId);
    return rows.map(({ title, why, source, owner, state, dueAt, createdAt, updatedAt }) => {
      return { title, why, source, owner, state, dueAt, createdAt, updatedAt };
    });
  }

  /** Where somebody wants to be told. */
  addressOf(accountId: string): Promise<NoticeAddress> {
    return this.addresses.of(accountId);
  }

  private async stopsOf(incidentId: string): Promise<DeletionStop[]> {
    const open = (await this.tasks.ofIncident(incidentId)).filter(({ state }) => state === 'open');
    return open.map(({ id, title }) => ({ by: 'task', id, words: `A task is open: ${title}` }));
  }

  private async all(filter: TaskFilter, now: string): Promise<DueTask[]> {
    const found: DueTask[] = [];
    const references = new Map<string, string>();
    for (let after: { sort: string; id: string } | null = null; ;) {
      const rows: TaskRow[] = await this.tasks.page(filter, { limit: PART, after });
      for (const row of rows.slice(0, PART)) {
        const reference =
          references.get(row.incidentId) ?? (await this.sections.outline(row.incidentId)).reference;
        references.set(row.incidentId, reference);
        found.push(dueTask(row, reference, now));
      }
      const last = rows[PART - 1];
      if (rows.length <= PART || last === undefined) return found;
      after = { sort: last.dueOrder, id: last.id };
    }
  }
}

function dueTask(row: TaskRow, reference: string, now: string): DueTask {
  const { id, incidentId, title, template, owner, assigneeId, dueAt, updatedAt } = row;
  const overdue = dueAt !== null && dueAt < now;
  return {
    id,
    incidentId,
    reference,
    title,
    own: template === null,
    owner,
    assigneeId,
    dueAt,
    overdue,
    updatedAt,
  };
}
