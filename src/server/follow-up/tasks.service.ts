import { Injectable } from '@nestjs/common';
import {
  OwnTaskDto,
  readFollowUpInput,
  TaskAssigneeDto,
  TaskCompletionDto,
  TaskReachedDto,
  TaskUndoingDto,
} from '../../../shared/wire/follow-up-requests.dto.js';
import { AccountFinder, type PersonActor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { assertFresh } from '../platform/http/entity-tag.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { IncidentAccess } from '../record/record.api.js';
import type { TaskRow } from './database/task.row.js';
import { TasksRepository } from './database/tasks.repository.js';
import { type TaskHappening, taskEvent } from './task-events.js';
import { type TaskView, viewTask } from './task-views.js';

/** A task that somebody added comes after those that were planned. */
const LAST = 1_000_000;

/** The task of which incident, in which version. */
export interface TaskAddress {
  readonly incidentId: string;
  readonly taskId: string;
  readonly ifMatch?: string | undefined;
}

/** What people do with tasks. Each step is an event of its own that stays. */
@Injectable()
export class TasksService {
  constructor(
    private readonly tasks: TasksRepository,
    private readonly access: IncidentAccess,
    private readonly accounts: AccountFinder,
    private readonly unitOfWork: UnitOfWork,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  async add(
    incidentId: string,
    body: unknown,
    key: string | undefined,
    actor: PersonActor,
  ): Promise<TaskView> {
    const task = readInput(readFollowUpInput(OwnTaskDto, body));
    const incident = await this.access.read(incidentId, actor);
    const request = { operation: 'task', key: readIdempotencyKey(key), body: { incidentId, body } };
    const { id } = await this.createOnce.run(request, async (newId) => {
      const assigneeId = await this.assignable(task.assigneeId, actor);
      const now = this.clock.now();
      await this.tasks.add([ownTask(newId, incident.id, task, assigneeId, now)]);
      const added: TaskHappening = {
        kind: 'added',
        words: `Added by ${actor.personName}.`,
        dueAfter: task.dueAt,
      };
      await this.tasks.addEvents([taskEvent(newId, 1, added, actor, now)]);
    });
    return this.shown(incident.id, id);
  }

  complete(at: TaskAddress, body: unknown, actor: PersonActor): Promise<TaskView> {
    const { evidence, evidenceIds } = readInput(readFollowUpInput(TaskCompletionDto, body));
    return this.edit(at, { evidence }, actor, (row) => {
      if (row.state !== 'open')
        return refuse(409, `The task is ${row.state}: only an open one is completed.`);
      const happening: TaskHappening = { kind: 'done', words: evidence, evidenceIds: evidenceIds ?? null };
      return { change: { state: 'done' }, happening };
    });
  }

  /** Opens a task again that was done by mistake; that it was taken for done stays in its events. */
  undo(at: TaskAddress, body: unknown, actor: PersonActor): Promise<TaskView> {
    const { why } = readInput(readFollowUpInput(TaskUndoingDto, body));
    return this.edit(at, { why }, actor, async (row) => {
      if (row.state !== 'done') return refuse(409, `The task is ${row.state}: only a done one is undone.`);
      const rounds = await this.tasks.ofIncident(row.incidentId);
      if (rounds.some((other) => other.taskKey === row.taskKey && other.round > row.round)) {
        return refuse(409, 'The work is due again as a task of its own: that one is open or done.');
      }
      return { change: { state: 'open' }, happening: { kind: 'undone', words: why } };
    });
  }

  assign(at: TaskAddress, body: unknown, actor: PersonActor): Promise<TaskView> {
    const sent = readInput(readFollowUpInput(TaskAssigneeDto, body));
    return this.edit(at, { assignee: sent.accountId ?? null }, actor, async () => {
      const assigneeId = await this.assignable(sent.accountId, actor);
      return { change: { assigneeId }, happening: { kind: 'assigned', aboutAccountId: assigneeId } };
    });
  }

  /** "I have it": nobody else is asked any more. The first to say so has it, and a second time changes nothing. */
  async acknowledge({ incidentId, taskId }: TaskAddress, actor: PersonActor): Promise<TaskView> {
    const incident = await this.access.read(incidentId, actor);
    await this.unitOfWork.run(async () => {
      const row = await this.found(incident.id, taskId);
      if (row.acknowledgedAt !== null) return;
      if (row.state !== 'open') refuse(409, `The task is ${row.state}: there is nothing to acknowledge.`);
      await this.write(row, acknowledgement(row, actor, this.clock.now()), { kind: 'acknowledged' }, actor);
    });
    return this.shown(incident.id, taskId);
  }

  /** Somebody outside was reached on the telephone or radio; whoever did it has the task. */
  async reached(
    { incidentId, taskId }: TaskAddress,
    body: unknown,
    key: string | undefined,
    actor: PersonActor,
  ): Promise<TaskView> {
    const { whom, on, at, theirReference } = readInput(readFollowUpInput(TaskReachedDto, body));
    const incident = await this.access.read(incidentId, actor);
    const request = { operation: 'task-reached', key: readIdempotencyKey(key), body: { taskId, body } };
    await this.createOnce.run(request, async () => {
      const row = await this.found(incident.id, taskId);
      const when = at ?? this.clock.now();
      const parts = [
        `Reached ${whom}`,
        on && `on ${on}`,
        `at ${when}`,
        theirReference && `reference ${theirReference}`,
      ];
      const words = `${parts.filter(Boolean).join(', ')}.`;
      await this.write(row, acknowledgement(row, actor, this.clock.now()), { kind: 'reached', words }, actor);
    });
    return this.shown(incident.id, taskId);
  }

  private async edit(
    { incidentId, taskId, ifMatch }: TaskAddress,
    yours: object,
    actor: PersonActor,
    stepOf: (row: TaskRow) => TaskStep | Promise<TaskStep>,
  ): Promise<TaskView> {
    const incident = await this.access.read(incidentId, actor);
    await this.unitOfWork.run(async () => {
      const row = await this.found(incident.id, taskId);
      assertFresh(ifMatch, viewTask(row, this.clock.now()), yours);
      const { change, happening } = await stepOf(row);
      await this.write(row, change, happening, actor);
    });
    return this.shown(incident.id, taskId);
  }

  private async write(row: TaskRow, change: Partial<TaskRow>, happening: TaskHappening, actor: PersonActor) {
    const now = this.clock.now();
    await this.tasks.change({ ...change, id: row.id, version: row.version + 1, updatedAt: now });
    const sequence = (await this.tasks.eventCount(row.id)) + 1;
    await this.tasks.addEvents([taskEvent(row.id, sequence, happening, actor, now)]);
  }

  /** Staff takes a task or gives it back; a manager gives it to anybody who works here. */
  private async assignable(accountId: string | undefined, actor: PersonActor): Promise<string | null> {
    if (accountId === undefined) return null;
    if (actor.role === 'staff' && accountId !== actor.accountId) {
      refuse(403, 'You can take a task yourself; a manager gives it to somebody else.', '/accountId');
    }
    const account = await this.accounts.find(accountId);
    if (account === null || account.role === 'counsel') {
      refuse(422, 'There is no open account with this id that may do it.', '/accountId');
    }
    return account.id;
  }

  private async found(incidentId: string, taskId: string): Promise<TaskRow> {
    return (
      (await this.tasks.find(incidentId, taskId)) ?? refuse(404, 'There is no such task of this incident.')
    );
  }

  private async shown(incidentId: string, taskId: string): Promise<TaskView> {
    return viewTask(await this.found(incidentId, taskId), this.clock.now());
  }
}

interface TaskStep {
  readonly change: Partial<TaskRow>;
  readonly happening: TaskHappening;
}

function acknowledgement(row: TaskRow, actor: PersonActor, now: string): Partial<TaskRow> {
  return row.acknowledgedAt === null ? { acknowledgedAt: now, acknowledgedBy: actor.personName } : {};
}

function ownTask(
  id: string,
  incidentId: string,
  { title, why, dueAt, owner }: OwnTaskDto,
  assigneeId: string | null,
  now: string,
): TaskRow {
  // As the column keeps it: order by text is order in time.
  const due = new Date(dueAt).toISOString();
  return {
    id,
    incidentId,
    taskKey: `own:${id}`,
    round: 1,
    template: null,
    taskOrder: LAST,
    title,
    why: why ?? '',
    source: 'Added by a person.',
    owner: owner ?? 'manager',
    assigneeId,
    state: 'open',
    dueAt: due,
    dueOrder: due,
    dueWhy: 'The time that was set for it.',
    evidenceAsked: 'What was done, when and by whom.',
    escalates: false,
    restsOn: [],
    duty: null,
    acknowledgedAt: null,
    acknowledgedBy: null,
    version: 1,
    createdAt: now,
    updatedAt: now,
  };
}
