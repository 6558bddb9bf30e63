import { Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { AccountRow } from './account.row.js';
import { RosterEntryRow } from './roster-entry.row.js';

/** An entry and the person it is about. */
export type NamedEntry = RosterEntryRow & { readonly personName: string };

@Injectable()
export class RosterRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** Entries that hold on any of the days, of people whose account is open, by name. */
  async between(from: string, to: string): Promise<NamedEntry[]> {
    const { entities, raw } = await this.unitOfWork.manager
      .createQueryBuilder(RosterEntryRow, 'entry')
      .innerJoin(AccountRow, 'account', 'account.id = entry.accountId AND account.active')
      .addSelect('account.name', 'person_name')
      .where('entry.withdrawnAt IS NULL AND entry.firstDay <= :to AND entry.lastDay >= :from', { from, to })
      .orderBy('account.name')
      .addOrderBy('entry.id')
      .getRawAndEntities<{ person_name: string }>();
    return entities.map((entry, place) => ({ ...entry, personName: raw[place]?.person_name ?? '' }));
  }

  find(id: string): Promise<RosterEntryRow | null> {
    return this.unitOfWork.manager.findOneBy(RosterEntryRow, { id });
  }

  async add(entry: RosterEntryRow): Promise<void> {
    await this.unitOfWork.manager.insert(RosterEntryRow, entry);
  }

  async change(id: string, change: Partial<RosterEntryRow>): Promise<void> {
    await this.unitOfWork.manager.update(RosterEntryRow, { id }, change);
  }
}
