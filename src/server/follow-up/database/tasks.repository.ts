import { Injectable } from '@nestjs/common';
import { uuid } from '../../../../shared/wire/record-requests.dto.js';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import type { PageRequest } from '../../platform/http/cursor.js';
import { TaskEventRow } from './task-event.row.js';
import { TaskRow } from './task.row.js';

/** Which tasks a list holds. */
export interface TaskFilter {
  readonly state: TaskRow['state'];
  readonly assigneeId?: string;
  /** Due at this instant or before it, or at a time that nobody knows. */
  readonly dueBy?: string;
}

export const UNDATED = '';

/** Tasks and what happened to them. */
@Injectable()
export class TasksRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** In the order of the work, every round of it. */
  ofIncident(incidentId: string): Promise<TaskRow[]> {
    return this.unitOfWork.manager.find(TaskRow, {
      where: { incidentId },
      order: { taskOrder: 'ASC', createdAt: 'ASC', taskKey: 'ASC', round: 'ASC' },
    });
  }

  /** Null for an id that cannot be one. */
  async find(incidentId: string, id: string): Promise<TaskRow | null> {
    if (uuid.faultOf(id) !== null) return null;
    return this.unitOfWork.manager.findOneBy(TaskRow, { incidentId, id });
  }

  eventsOf(taskId: string): Promise<TaskEventRow[]> {
    return this.unitOfWork.manager.find(TaskEventRow, { where: { taskId }, order: { sequence: 'ASC' } });
  }

  /** One more than the page holds; what is due soonest, or at a time that nobody knows, comes first. */
  page({ state, assigneeId, dueBy }: TaskFilter, { limit, after }: PageRequest): Promise<TaskRow[]> {
    const query = this.unitOfWork.manager
      .createQueryBuilder(TaskRow, 'task')
      .where('task.state = :state', { state })
      .orderBy('task.dueOrder')
      .addOrderBy('task.id')
      .limit(limit + 1);
    if (assigneeId !== undefined) query.andWhere('task.assigneeId = :assigneeId', { assigneeId });
    if (dueBy !== undefined) query.andWhere('task.dueOrder <= :dueBy', { dueBy });
    if (after !== null) {
      query.andWhere('(task.dueOrder > :sort OR (task.dueOrder = :sort AND task.id > :id))', { ...after });
    }
    return query.getMany();
  }

  /** Urgent tasks that nobody has taken yet, the oldest first. */
  unacknowledged(): Promise<TaskRow[]> {
    return this.unitOfWork.manager
      .createQueryBuilder(TaskRow, 'task')
      .where("task.state = 'open' AND task.escalates = :escalates AND task.acknowledgedAt IS NULL", {
        escalates: true,
      })
      .orderBy('task.createdAt')
      .addOrderBy('task.id')
      .getMany();
  }

  async add(tasks: readonly TaskRow[]): Promise<void> {
    if (tasks.length > 0) await this.unitOfWork.manager.insert(TaskRow, [...tasks]);
  }

  async change({ id, ...changed }: Partial<TaskRow> & { id: string }): Promise<void> {
    await this.unitOfWork.manager.update(TaskRow, { id }, changed);
  }

  async addEvents(events: readonly TaskEventRow[]): Promise<void> {
    if (events.length > 0) await this.unitOfWork.manager.insert(TaskEventRow, [...events]);
  }

  /** Takes the words of what happened to a task away for good. */
  async dropWords(taskId: string): Promise<void> {
    await this.unitOfWork.manager.update(TaskEventRow, { taskId }, { words: null });
  }

  async eventCount(taskId: string): Promise<number> {
    return this.unitOfWork.manager.countBy(TaskEventRow, { taskId });
  }

  /** Who was asked about each of these tasks, the first first. */
  async askedAbout(taskIds: readonly string[]): Promise<TaskEventRow[]> {
    if (taskIds.length === 0) return [];
    return this.unitOfWork.manager
      .createQueryBuilder(TaskEventRow, 'event')
      .where("event.kind = 'asked' AND event.taskId IN (:...taskIds)", { taskIds })
      .orderBy('event.taskId')
      .addOrderBy('event.sequence')
      .getMany();
  }
}
