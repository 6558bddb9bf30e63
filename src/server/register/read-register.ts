import { setImmediate } from 'node:timers/promises';
import type { RegisterFilter } from '../../../shared/wire/register-queries.dto.js';
import type { Cursor } from '../platform/http/cursor.js';
import type { RegisterRepository } from './database/register.repository.js';
import type { OfLine } from './export-columns.js';
import type { RegisterLine } from './register-rows.js';

const AT_ONCE = 200;

export interface ReadIncident {
  readonly incident: RegisterLine;
  readonly of: OfLine;
}

/**
 * Every incident of a filter with all that belongs to it, part by part, the latest first. Between two parts others
 * have their turn.
 */
export async function* readRegister(
  register: RegisterRepository,
  filter: RegisterFilter,
  now: string,
): AsyncGenerator<ReadIncident[]> {
  for (let after: Cursor | null = null; ;) {
    const heads = await register.heads(filter, now, { after, limit: AT_ONCE });
    const last = heads.at(-1);
    if (last === undefined) return;
    const ids = heads.map(({ head }) => head.id);
    const duties = await register.duties(ids, now);
    const tasks = await register.tasks(ids);
    const filings = await register.filings(ids);
    yield heads.map(({ head }) => {
      const own = tasks.get(head.id) ?? [];
      const open = own.filter(({ state }) => state === 'open');
      const overdue = open.filter(({ dueAt }) => dueAt !== null && dueAt < now).length;
      const done = own.filter(({ state }) => state === 'done').length;
      const incident = {
        ...head,
        duties: duties.get(head.id) ?? [],
        tasks: { open: open.length, overdue, done },
      };
      return { incident, of: { tasks: own, filings: filings.get(head.id) ?? [] } };
    });
    if (heads.length < AT_ONCE) return;
    after = { sort: last.sort, id: last.head.id };
    await setImmediate();
  }
}
