import { Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import type { PageRequest } from '../../platform/http/cursor.js';
import { DutyStateRow } from './duty-state.row.js';

/** How the reports of incidents stand. */
@Injectable()
export class DutyStatesRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  of(incidentId: string): Promise<DutyStateRow[]> {
    return this.unitOfWork.manager.findBy(DutyStateRow, { incidentId });
  }

  /** Puts the reports of an incident in place of those that were there. */
  async replace(before: readonly DutyStateRow[], now: readonly DutyStateRow[]): Promise<void> {
    const { manager } = this.unitOfWork;
    const stay = new Map(now.map((row) => [row.id, row]));
    const known = new Set(before.map(({ id }) => id));
    for (const { id } of before) if (!stay.has(id)) await manager.delete(DutyStateRow, { id });
    for (const row of now) if (known.has(row.id)) await manager.update(DutyStateRow, { id: row.id }, row);
    const fresh = now.filter(({ id }) => !known.has(id));
    if (fresh.length > 0) await manager.insert(DutyStateRow, fresh);
  }

  /** One more than the page holds, of those on which something is still to be done, the most urgent first. */
  async open({ limit, after }: PageRequest): Promise<DutyStateRow[]> {
    const query = this.unitOfWork.manager
      .createQueryBuilder(DutyStateRow, 'state')
      .where('state.settled = :settled', { settled: false })
      .orderBy('state.dueOrder')
      .addOrderBy('state.id')
      .limit(limit + 1);
    if (after !== null) {
      query.andWhere('(state.dueOrder > :sort OR (state.dueOrder = :sort AND state.id > :id))', { ...after });
    }
    return query.getMany();
  }
}
