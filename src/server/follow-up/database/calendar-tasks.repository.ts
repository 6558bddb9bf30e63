import { Injectable } from '@nestjs/common';
import type { TaskOwner } from '../../../../shared/follow-up/task-template.js';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { TaskRow } from './task.row.js';

/** Tasks as a calendar holds them. */
@Injectable()
export class CalendarTasksRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /**
   * Tasks with a time, the soonest first: open, or changed since an instant.
   * @param owners kinds of which those count too that nobody was given
   */
  dated(accountId: string, owners: readonly TaskOwner[], since: string): Promise<TaskRow[]> {
    const nobodys = owners.length === 0 ? '' : ' OR (task.assigneeId IS NULL AND task.owner IN (:...owners))';
    return this.unitOfWork.manager
      .createQueryBuilder(TaskRow, 'task')
      .where(`(task.assigneeId = :accountId${nobodys})`, { accountId, owners })
      .andWhere('task.dueAt IS NOT NULL')
      .andWhere(`(task.state = 'open' OR task.updatedAt >= :since)`, { since })
      .orderBy('task.dueOrder')
      .addOrderBy('task.id')
      .getMany();
  }
}
