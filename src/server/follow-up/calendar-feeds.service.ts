import { createHash, randomBytes } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { AccountFinder, type PersonActor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { refuse } from '../platform/http/refuse.js';
import { ServiceSections } from '../record/record.api.js';
import { type TaskAt, writeCalendar } from './calendar-sheet.js';
import { CalendarOwners } from './calendar-owners.js';
import { CalendarFeedsRepository } from './database/calendar-feeds.repository.js';
import { CalendarTasksRepository } from './database/calendar-tasks.repository.js';
import type { TaskRow } from './database/task.row.js';
import { FollowUpForms } from './follow-up-forms.js';

/** What is done or superseded stays in the calendar for so long, so that every program hears of it. */
const KEPT_MS = 90 * 24 * 60 * 60_000;

export interface CalendarFeed {
  readonly id: string;
  readonly createdAt: string;
}

/** The address is told once; a retry of the create is not told it again. */
export interface NewCalendarFeed extends CalendarFeed {
  readonly path: string | null;
}

/** Calendars by secret address: whoever has the address reads it, so that calendar programs can, which cannot sign in. */
@Injectable()
export class CalendarFeeds {
  constructor(
    private readonly feeds: CalendarFeedsRepository,
    private readonly tasks: CalendarTasksRepository,
    private readonly owners: CalendarOwners,
    private readonly sections: ServiceSections,
    private readonly accounts: AccountFinder,
    private readonly forms: FollowUpForms,
    private readonly unitOfWork: UnitOfWork,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  async list({ accountId }: PersonActor): Promise<{ items: CalendarFeed[] }> {
    const feed = await this.feeds.ofAccount(accountId);
    return { items: feed === null ? [] : [viewOf(feed)] };
  }

  /** A new address; the one before stops to work. */
  async renew(key: string, { accountId }: PersonActor): Promise<NewCalendarFeed> {
    const secret = randomBytes(32).toString('base64url');
    const createdAt = this.clock.now();
    const request = { operation: 'calendar-feed', key, body: { accountId } };
    const { id, again } = await this.createOnce.run(request, async (newId) => {
      const before = await this.feeds.ofAccount(accountId);
      if (before !== null) await this.feeds.revoke(before.id, createdAt);
      await this.feeds.add({ id: newId, accountId, secretHash: hashOf(secret), createdAt, revokedAt: null });
    });
    const feed = (await this.feeds.find(id)) ?? refuse(404, 'There is no such calendar.');
    return { ...viewOf(feed), path: again ? null : `/calendar/${secret}.ics` };
  }

  revoke(id: string, { accountId }: PersonActor): Promise<void> {
    return this.unitOfWork.run(async () => {
      const feed = await this.feeds.ofAccount(accountId);
      if (feed?.id !== id) return refuse(404, 'There is no such calendar of yours.');
      await this.feeds.revoke(id, this.clock.now());
    });
  }

  /** The calendar behind a secret address; 404 alike for one that was revoked, was never given, or whose owner left. */
  async read(file: string): Promise<string> {
    const secret = /^([\w-]{43})\.ics$/.exec(file)?.[1];
    const feed = secret === undefined ? null : await this.feeds.behind(hashOf(secret));
    const account = feed === null ? null : await this.accounts.find(feed.accountId);
    if (account === null) return refuse(404, 'There is no calendar at this address.');
    const now = this.clock.now();
    const since = new Date(Date.parse(now) - KEPT_MS).toISOString();
    const kinds = await this.owners.kindsOf(account, now);
    const tasks = await this.tasks.dated(account.id, kinds, since);
    return writeCalendar(await this.named(tasks), this.forms.tasks);
  }

  private async named(tasks: readonly TaskRow[]): Promise<TaskAt[]> {
    const references = new Map<string, string>();
    for (const incidentId of new Set(tasks.map((task) => task.incidentId))) {
      references.set(incidentId, (await this.sections.outline(incidentId)).reference);
    }
    return tasks.map((task) => ({ task, reference: references.get(task.incidentId) ?? '' }));
  }
}

function viewOf({ id, createdAt }: CalendarFeed): CalendarFeed {
  return { id, createdAt };
}

/** Nothing slower is needed: there is too much chance in 32 bytes to try. */
function hashOf(secret: string): string {
  return createHash('sha256').update(secret).digest('hex');
}
