import { Injectable } from '@nestjs/common';
import { type Page, readPageQuery } from '../../../shared/wire/page-query.dto.js';
import { type RegisterOrder, RegisterQueryDto } from '../../../shared/wire/register-queries.dto.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { pageOf, pageRequest } from '../platform/http/cursor.js';
import { readInput } from '../platform/http/read-input.js';
import { RecordSettings } from '../record/record.api.js';
import type { ReadableFilter } from './database/filter-register.js';
import { RegisterRepository } from './database/register.repository.js';
import type { RegisterClock, RegisterCount, RegisterLine } from './register-rows.js';

const NO_TASKS = { open: 0, overdue: 0, done: 0 };

/** Every incident with how its reports and tasks stand. */
@Injectable()
export class RegisterService {
  constructor(
    private readonly register: RegisterRepository,
    private readonly clock: Clock,
    private readonly settings: RecordSettings,
  ) {}

  async page(query: unknown, reader: PersonActor): Promise<Page<RegisterLine>> {
    const { filter, order, ...asked } = readQuery(query, reader);
    const request = pageRequest(asked);
    const now = this.clock.now();
    const wanted = { order, after: request.after, limit: request.limit + 1 };
    const rows = await this.register.heads(filter, now, wanted);
    const { items, next } = pageOf(rows, request, ({ sort, head }) => ({ sort, id: head.id }));
    if (items.length === 0) return { items: [], next };
    const ids = items.map(({ head }) => head.id);
    const duties = await this.register.duties(ids, now);
    const tasks = await this.register.taskCounts(ids, now);
    const lines = items.map(({ head }) => ({
      ...head,
      duties: duties.get(head.id) ?? [],
      tasks: tasks.get(head.id) ?? NO_TASKS,
    }));
    return { items: lines, next };
  }

  /** Reports of all incidents that are not settled, the one that is due soonest first. */
  async clocks(query: unknown, reader: PersonActor): Promise<Page<RegisterClock>> {
    const request = pageRequest(readInput(readPageQuery(query), 'query'));
    const { counselAccount } = boundsOf(reader);
    const rows = await this.register.clocks(
      this.clock.now(),
      request.after,
      request.limit + 1,
      counselAccount,
    );
    const { items, next } = pageOf(rows, request, ({ dueOrder, id }) => ({ sort: dueOrder, id }));
    return {
      items: items.map(({ dueOrder, id, ...clock }) => {
        void [dueOrder, id];
        return clock;
      }),
      next,
    };
  }

  /** How many incidents a query asks for, whatever part and order of them. */
  async count(query: unknown, reader: PersonActor): Promise<RegisterCount> {
    const count = await this.register.count(readQuery(query, reader).filter, this.clock.now());
    return { count, timeZone: this.settings.timeZone };
  }
}

interface ReadQuery {
  readonly filter: ReadableFilter;
  readonly order: RegisterOrder | undefined;
  readonly limit?: string;
  readonly after?: string;
}

/** Counsel reads of the incidents that were assigned, and learns of no other that it is there. */
function boundsOf({ role, accountId }: PersonActor): Pick<ReadableFilter, 'counselAccount'> {
  return role === 'counsel' ? { counselAccount: accountId } : {};
}

/** @throws ProblemException 422 naming each fault */
function readQuery(query: unknown, reader: PersonActor): ReadQuery {
  const asked = readInput(readPageQuery(query, RegisterQueryDto), 'query');
  const { limit, after, order, ...filter } = asked;
  return {
    filter: { ...filter, ...boundsOf(reader) },
    order,
    ...(limit !== undefined && { limit }),
    ...(after !== undefined && { after }),
  };
}
