import { Injectable } from '@nestjs/common';
import { Clock } from '../platform/clock.js';
import { EscalationWatch } from './escalation-watch.js';
import { NoticeAddresses } from './notice-addresses.service.js';
import { type TaskView, viewTask } from './task-views.js';

export interface EscalationView {
  readonly reference: string;
  readonly task: TaskView;
  readonly asked: readonly {
    readonly accountId: string;
    readonly name: string;
    readonly at: string;
    readonly phone: string | null;
  }[];
}

/** What is put to whom now, with a number to call each of them on. */
@Injectable()
export class Escalations {
  constructor(
    private readonly watch: EscalationWatch,
    private readonly addresses: NoticeAddresses,
    private readonly clock: Clock,
  ) {}

  async current(): Promise<{ items: EscalationView[] }> {
    const now = this.clock.now();
    const items: EscalationView[] = [];
    for (const { task, reference, asked } of await this.watch.current()) {
      const people: EscalationView['asked'][number][] = [];
      for (const one of asked) {
        const { phone } = await this.addresses.of(one.accountId);
        people.push({ ...one, phone });
      }
      items.push({ reference, task: viewTask(task, now), asked: people });
    }
    return { items };
  }
}
