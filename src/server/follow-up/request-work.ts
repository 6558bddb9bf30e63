import { Injectable } from '@nestjs/common';
import { isRequestWorkDone, type RequestReach } from '../../../shared/follow-up/request-subjects.js';
import type { RequestOfIncident } from '../../../shared/record/legal-request.js';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { TasksRepository } from './database/tasks.repository.js';
import { FollowUpForms } from './follow-up-forms.js';
import { taskEvent } from './task-events.js';

const REACHES: readonly RequestReach[] = ['request', 'request-for-counsel', 'request-to-object'];

/** What the log of requests says is done shows that its task is done; nobody writes it down twice. */
@Injectable()
export class RequestWork {
  constructor(
    private readonly tasks: TasksRepository,
    private readonly forms: FollowUpForms,
    private readonly clock: Clock,
  ) {}

  /** Within the unit of work that changed the requests. */
  async complete(incidentId: string, requests: readonly RequestOfIncident[], actor: Actor): Promise<void> {
    const done = new Map<string, string>(
      requests.flatMap((request) =>
        REACHES.filter((reach) => isRequestWorkDone(reach, request)).flatMap((reach) =>
          this.templatesFor(reach).map((template) => [`${template}:${request.id}`, request.number] as const),
        ),
      ),
    );
    if (done.size === 0) return;
    for (const task of await this.tasks.ofIncident(incidentId)) {
      const number = task.state === 'open' ? done.get(task.taskKey) : undefined;
      if (number === undefined) continue;
      const now = this.clock.now();
      await this.tasks.change({ id: task.id, state: 'done', version: task.version + 1, updatedAt: now });
      const sequence = (await this.tasks.eventCount(task.id)) + 1;
      const words = `The log of requests says so: ${number}.`;
      await this.tasks.addEvents([taskEvent(task.id, sequence, { kind: 'done', words }, actor, now)]);
    }
  }

  private templatesFor(reach: RequestReach): string[] {
    return this.forms.tasks.filter((template) => template.for === reach).map(({ id }) => id);
  }
}
