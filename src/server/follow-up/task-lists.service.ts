import { Injectable } from '@nestjs/common';
import type { Page } from '../../../shared/wire/page-query.dto.js';
import { readPageQuery } from '../../../shared/wire/page-query.dto.js';
import { TaskQueryDto } from '../../../shared/wire/follow-up-queries.dto.js';
import { AccountFinder, type Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { pageOf, pageRequest } from '../platform/http/cursor.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { IncidentAccess, ServiceSections } from '../record/record.api.js';
import { TasksRepository } from './database/tasks.repository.js';
import type { TaskRow } from './database/task.row.js';
import { type TaskEventView, type TaskLine, type TaskView, viewEvent, viewTask } from './task-views.js';

const DAY_MS = 86_400_000;

/** What is to be done, for those who may read it. */
@Injectable()
export class TaskLists {
  constructor(
    private readonly tasks: TasksRepository,
    private readonly access: IncidentAccess,
    private readonly sections: ServiceSections,
    private readonly accounts: AccountFinder,
    private readonly clock: Clock,
  ) {}

  /** All tasks of an incident in the order of the work, those done and superseded among them. */
  async ofIncident(incidentId: string, actor: Actor): Promise<{ items: TaskLine[] }> {
    const { id } = await this.access.read(incidentId, actor);
    return { items: await this.lines(await this.tasks.ofIncident(id)) };
  }

  /** One task with everything that happened to it, the first thing first. */
  async find(
    incidentId: string,
    taskId: string,
    actor: Actor,
  ): Promise<TaskView & { readonly events: readonly TaskEventView[] }> {
    const { id } = await this.access.read(incidentId, actor);
    const row = await this.tasks.find(id, taskId);
    if (row === null) return refuse(404, 'There is no such task of this incident.');
    const events = await this.tasks.eventsOf(row.id);
    return { ...viewTask(row, this.clock.now()), events: events.map(viewEvent) };
  }

  /** Tasks of all incidents, what is due soonest first. */
  async page(query: unknown, actor: Actor): Promise<Page<TaskLine>> {
    const asked = readInput(readPageQuery(query, TaskQueryDto), 'query');
    const request = pageRequest(asked);
    const now = this.clock.now();
    const rows = await this.tasks.page(
      {
        state: asked.state ?? 'open',
        ...(asked.mine === 'yes' && { assigneeId: actor.accountId ?? '' }),
        ...(asked.due !== undefined && { dueBy: asked.due === 'overdue' ? now : dayAfter(now) }),
      },
      request,
    );
    const { items, next } = pageOf(rows, request, ({ dueOrder, id }) => ({ sort: dueOrder, id }));
    return { items: await this.lines(items), next };
  }

  private async lines(rows: readonly TaskRow[]): Promise<TaskLine[]> {
    const now = this.clock.now();
    const references = await this.sections.references([...new Set(rows.map(({ incidentId }) => incidentId))]);
    const assignees = rows.flatMap(({ assigneeId }) => assigneeId ?? []);
    const names = await this.accounts.names([...new Set(assignees)]);
    return rows.map((row) => ({
      ...viewTask(row, now),
      reference: references.get(row.incidentId) ?? '',
      assigneeName: names.get(row.assigneeId ?? '') ?? null,
    }));
  }
}

function dayAfter(instant: string): string {
  return new Date(Date.parse(instant) + DAY_MS).toISOString();
}
