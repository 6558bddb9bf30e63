import { Injectable } from '@nestjs/common';
import { type Page, readPageQuery } from '../../../shared/wire/page-query.dto.js';
import { RegisterQueryDto } from '../../../shared/wire/register-queries.dto.js';
import { Clock } from '../platform/clock.js';
import { pageOf, pageRequest } from '../platform/http/cursor.js';
import { readInput } from '../platform/http/read-input.js';
import { RegisterRepository } from './database/register.repository.js';
import type { RegisterClock, RegisterLine } from './register-rows.js';

const NO_TASKS = { open: 0, overdue: 0, done: 0 };

/** Every incident with how its reports and tasks stand. */
@Injectable()
export class RegisterService {
  constructor(
    private readonly register: RegisterRepository,
    private readonly clock: Clock,
  ) {}

  async page(query: unknown): Promise<Page<RegisterLine>> {
    const { limit, after, ...filter } = readInput(readPageQuery(query, RegisterQueryDto), 'query');
    const request = pageRequest({
      ...(limit !== undefined && { limit }),
      ...(after !== undefined && { after }),
    });
    const now = this.clock.now();
    const rows = await this.register.heads(filter, now, request.after, request.limit + 1);
    const { items, next } = pageOf(rows, request, ({ openedAt, id }) => ({ sort: openedAt, id }));
    if (items.length === 0) return { items: [], next };
    const ids = items.map(({ id }) => id);
    const duties = await this.register.duties(ids, now);
    const tasks = await this.register.taskCounts(ids, now);
    const lines = items.map((head) => ({
      ...head,
      duties: duties.get(head.id) ?? [],
      tasks: tasks.get(head.id) ?? NO_TASKS,
    }));
    return { items: lines, next };
  }

  /** Reports of all incidents that are not settled, the one that is due soonest first. */
  async clocks(query: unknown): Promise<Page<RegisterClock>> {
    const request = pageRequest(readInput(readPageQuery(query), 'query'));
    const rows = await this.register.clocks(this.clock.now(), request.after, request.limit + 1);
    const { items, next } = pageOf(rows, request, ({ dueOrder, id }) => ({ sort: dueOrder, id }));
    return {
      items: items.map(({ dueOrder, id, ...clock }) => {
        void [dueOrder, id];
        return clock;
      }),
      next,
    };
  }
}
