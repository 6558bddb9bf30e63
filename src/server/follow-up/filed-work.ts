import { Injectable } from '@nestjs/common';
import type { Actor } from '../accounts/accounts.api.js';
import type { DutyView } from '../decision/decision.api.js';
import { Clock } from '../platform/clock.js';
import type { TaskRow } from './database/task.row.js';
import { TasksRepository } from './database/tasks.repository.js';
import { type TaskHappening, taskEvent } from './task-events.js';

/** A filing that was recorded is the evidence that the task of filing it is done; nobody writes it down twice. */
@Injectable()
export class FiledWork {
  constructor(
    private readonly tasks: TasksRepository,
    private readonly clock: Clock,
  ) {}

  /** Completes what filings answer, within the unit of work that recorded them. */
  async complete(incidentId: string, duties: readonly DutyView[], actor: Actor): Promise<void> {
    const filed = duties.filter(({ state }) => state === 'filed');
    if (filed.length === 0) return;
    const tasks = await this.tasks.ofIncident(incidentId);
    for (const task of tasks.filter(({ state }) => state === 'open')) {
      const answer = filed.find((duty) => keysOf(duty).includes(task.taskKey));
      if (answer === undefined) continue;
      const filings = await this.notUsed(answer.filings, tasks, task);
      if (filings.length > 0) await this.finish(task, filings, actor);
    }
  }

  /** A filing that showed an earlier round to be done does not show that what is new since then was filed. */
  private async notUsed(
    filings: readonly string[],
    tasks: readonly TaskRow[],
    { taskKey, round }: TaskRow,
  ): Promise<string[]> {
    const used = new Set<string>();
    for (const earlier of tasks.filter((one) => one.taskKey === taskKey && one.round < round)) {
      for (const { evidenceIds } of await this.tasks.eventsOf(earlier.id)) {
        for (const id of evidenceIds ?? []) used.add(id);
      }
    }
    return filings.filter((id) => !used.has(id));
  }

  private async finish(task: TaskRow, filings: readonly string[], actor: Actor): Promise<void> {
    const now = this.clock.now();
    await this.tasks.change({ id: task.id, state: 'done', version: task.version + 1, updatedAt: now });
    const sequence = (await this.tasks.eventCount(task.id)) + 1;
    const words = 'The filing is recorded.';
    const done: TaskHappening = { kind: 'done', words, evidenceIds: [...filings] };
    await this.tasks.addEvents([taskEvent(task.id, sequence, done, actor, now)]);
  }
}

/** The keys of the tasks that a filing for a duty answers. */
function keysOf({ form, duty, vessel }: DutyView): string[] {
  if (form === 'notice') return [`notice:${duty}`];
  return [vessel === null ? `file:${duty}` : `file:${duty}:${vessel}`];
}
