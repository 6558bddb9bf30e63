import { Injectable, Logger, type OnApplicationBootstrap, type OnApplicationShutdown } from '@nestjs/common';
import { zoneClock } from '../../../shared/time/zone-clock.js';
import { AccountFinder, type FoundAccount } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { MailMessage } from '../platform/mail/mail-message.js';
import { MailQueue } from '../platform/mail/mail-queue.js';
import { RecordSettings } from '../record/record.api.js';
import { CalendarOwners } from './calendar-owners.js';
import { type DueTask, FollowUp } from './follow-up.service.js';

const SWEEP_MS = 10 * 60_000;

/** By the clock of the business: before the boats go out. */
const FROM_HOUR = 6;

/**
 * Once a day tells everybody who left a mail address what of theirs is overdue, due before the next digest, or due at a
 * time that nobody knows. Immediate duties do not ride on it.
 */
@Injectable()
export class DigestWatch implements OnApplicationBootstrap, OnApplicationShutdown {
  private timer: NodeJS.Timeout | undefined;
  /** The last day for which everybody was looked at: a restart looks again, and the queue knows what it has. */
  private sweptDay = '';
  private readonly logger = new Logger('Digest');

  constructor(
    private readonly followUp: FollowUp,
    private readonly owners: CalendarOwners,
    private readonly accounts: AccountFinder,
    private readonly queue: MailQueue,
    private readonly settings: RecordSettings,
    private readonly clock: Clock,
  ) {}

  onApplicationBootstrap(): void {
    this.timer = setInterval(() => void this.sweepNow(), SWEEP_MS).unref();
  }

  onApplicationShutdown(): void {
    clearInterval(this.timer);
  }

  /**
   * Queues the digests of the day, unless the day is too young or that was done.
   * @param now RFC 3339, UTC
   * @returns how many were queued
   */
  async sweep(now: string): Promise<number> {
    const local = zoneClock(this.settings.timeZone).format(Date.parse(now));
    const day = local.slice(0, 10);
    if (day === this.sweptDay || Number(local.slice(11, 13)) < FROM_HOUR) return 0;
    const open = await this.followUp.dueAndOverdue(now);
    let count = 0;
    for (const account of await this.people()) {
      const tasks = await this.of(account, open, now);
      if (tasks.length > 0 && (await this.tell(account, day, tasks))) count += 1;
    }
    this.sweptDay = day;
    return count;
  }

  private async sweepNow(): Promise<void> {
    try {
      await this.sweep(this.clock.now());
    } catch (error) {
      this.logger.error(error instanceof Error ? error.stack : String(error));
    }
  }

  private async people(): Promise<FoundAccount[]> {
    const roles = ['staff', 'manager', 'administrator'] as const;
    return (await Promise.all(roles.map((role) => this.accounts.ofRole(role)))).flat();
  }

  private async of(account: FoundAccount, open: readonly DueTask[], now: string): Promise<DueTask[]> {
    const kinds = await this.owners.kindsOf(account, now);
    return open.filter(({ assigneeId, owner }) =>
      assigneeId === null ? kinds.includes(owner) : assigneeId === account.id,
    );
  }

  private async tell({ id }: FoundAccount, day: string, tasks: readonly DueTask[]): Promise<boolean> {
    const { mail: to } = await this.followUp.addressOf(id);
    if (to === null) return false;
    const message = MailMessage.digest({ ...sortOut(tasks), timeZone: this.settings.timeZone });
    return this.queue.enqueue({ to, message, key: `digest/${day}/${id}` });
  }
}

/** Titles stay behind: somebody may have written one by hand. */
function sortOut(tasks: readonly DueTask[]) {
  const lines = (overdue: boolean) =>
    tasks.flatMap((task) =>
      task.dueAt === null || task.overdue !== overdue
        ? []
        : [{ reference: task.reference, dueAt: task.dueAt }],
    );
  const undated = tasks.flatMap(({ reference, dueAt }) => (dueAt === null ? [reference] : []));
  return { overdue: lines(true), due: lines(false), undated };
}
