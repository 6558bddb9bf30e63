import { Injectable, Logger, type OnApplicationShutdown } from '@nestjs/common';
import { type EscalationState, nextEscalation } from '../../../shared/follow-up/next-escalation.js';
import type { ServiceActor } from '../accounts/accounts.api.js';
import { AccountFinder } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { ServiceSections } from '../record/record.api.js';
import type { TaskEventRow } from './database/task-event.row.js';
import type { TaskRow } from './database/task.row.js';
import { TasksRepository } from './database/tasks.repository.js';
import { DutyCrew } from './duty-crew.js';
import { taskEvent } from './task-events.js';

const SWEEP_MS = 60_000;
const SERVICE: ServiceActor = { kind: 'service', personName: 'the service, as nobody has taken it yet' };

/** An urgent task that nobody has taken, and who was asked. */
export interface Escalated {
  readonly task: TaskRow;
  readonly reference: string;
  readonly asked: readonly { readonly accountId: string; readonly name: string; readonly at: string }[];
}

/**
 * Puts urgent tasks to one person of the roster after the other until somebody acknowledges. Whom it is put to sees it
 * in the desk; nothing here rides on mail.
 */
@Injectable()
export class EscalationWatch implements OnApplicationShutdown {
  private timer: NodeJS.Timeout | undefined;
  private readonly logger = new Logger('Escalation');

  constructor(
    private readonly tasks: TasksRepository,
    private readonly crew: DutyCrew,
    private readonly sections: ServiceSections,
    private readonly accounts: AccountFinder,
    private readonly unitOfWork: UnitOfWork,
    private readonly clock: Clock,
  ) {}

  /** Sweeps every minute; whoever starts the service for good starts this. */
  start(): void {
    this.timer ??= setInterval(() => void this.sweepNow(), SWEEP_MS).unref();
  }

  onApplicationShutdown(): void {
    clearInterval(this.timer);
  }

  /**
   * Asks the next person about each urgent task whose turn has come.
   * @param now RFC 3339, UTC
   * @returns how many were asked
   */
  async sweep(now: string): Promise<number> {
    let count = 0;
    for (const { id } of await this.tasks.unacknowledged()) count += (await this.ask(id, now)) ? 1 : 0;
    return count;
  }

  /** What is put to whom now, the oldest first. */
  async current(): Promise<Escalated[]> {
    const rows = await this.tasks.unacknowledged();
    const asked = await this.tasks.askedAbout(rows.map(({ id }) => id));
    const names = await this.namesOf(asked);
    const found: Escalated[] = [];
    for (const task of rows) {
      const { reference, status } = await this.sections.outline(task.incidentId);
      if (status === 'closed') continue;
      const people = asked
        .filter(({ taskId }) => taskId === task.id)
        .map(({ aboutAccountId, at }) => ({
          accountId: aboutAccountId ?? '',
          name: names.get(aboutAccountId ?? '') ?? 'an account that is closed',
          at,
        }));
      found.push({ task, reference, asked: people });
    }
    return found;
  }

  private async sweepNow(): Promise<void> {
    try {
      await this.sweep(this.clock.now());
    } catch (error) {
      this.logger.error(error instanceof Error ? error.stack : String(error));
    }
  }

  /** Looks again within the unit of work: somebody may have taken it meanwhile. */
  private ask(taskId: string, now: string): Promise<boolean> {
    return this.unitOfWork.run(async () => {
      const row = (await this.tasks.unacknowledged()).find(({ id }) => id === taskId);
      if (row === undefined) return false;
      const asked = await this.tasks.askedAbout([taskId]);
      const { incident } = await this.sections.record(row.incidentId);
      // Whoever closed the incident saw what was open, and gave a reason.
      if (incident.status === 'closed') return false;
      const roster = await this.crew.order(now, incident.timeZone, row.owner);
      const step = nextEscalation(stateOf(row, asked), roster, Date.parse(now));
      if (step.next !== 'ask') return false;
      const sequence = (await this.tasks.eventCount(taskId)) + 1;
      const happening = { kind: 'asked', aboutAccountId: step.accountId } as const;
      await this.tasks.addEvents([taskEvent(taskId, sequence, happening, SERVICE, now)]);
      return true;
    });
  }

  private async namesOf(asked: readonly TaskEventRow[]): Promise<Map<string, string>> {
    const ids = new Set(asked.flatMap(({ aboutAccountId }) => aboutAccountId ?? []));
    const names = new Map<string, string>();
    for (const id of ids) {
      const account = await this.accounts.find(id);
      if (account !== null) names.set(id, account.name);
    }
    return names;
  }
}

function stateOf(row: TaskRow, asked: readonly TaskEventRow[]): EscalationState {
  return {
    raisedAt: Date.parse(row.createdAt),
    asked: asked.map(({ aboutAccountId, at }) => ({ accountId: aboutAccountId ?? '', at: Date.parse(at) })),
    acknowledgedAt: row.acknowledgedAt === null ? null : Date.parse(row.acknowledgedAt),
  };
}
