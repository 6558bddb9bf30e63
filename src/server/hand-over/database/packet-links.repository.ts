import { Injectable } from '@nestjs/common';
import { IsNull } from 'typeorm';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { PacketLinkRow } from './packet-link.row.js';

/** A link locks for good after so many wrong passcodes in a row: whoever has it can ask for another. */
export const MOST_TRIES = 5;

@Injectable()
export class PacketLinksRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  find(id: string): Promise<PacketLinkRow | null> {
    return this.unitOfWork.manager.findOneBy(PacketLinkRow, { id });
  }

  /** By the hash, which says nothing of the token: how long it takes to find nothing tells nobody a letter of it. */
  byToken(tokenHash: string): Promise<PacketLinkRow | null> {
    return this.unitOfWork.manager.findOneBy(PacketLinkRow, { tokenHash });
  }

  async add(row: PacketLinkRow): Promise<void> {
    await this.unitOfWork.manager.insert(PacketLinkRow, row);
  }

  async change({ id, ...changed }: Partial<PacketLinkRow> & { id: string }): Promise<void> {
    await this.unitOfWork.manager.update(PacketLinkRow, { id }, changed);
  }

  /** None of an incident opens any more. */
  async closeOf(incidentId: string): Promise<void> {
    const closed = { closed: 'revoked' as const, permitHash: null, permitUntil: null };
    await this.unitOfWork.manager.update(PacketLinkRow, { incidentId, closed: IsNull() }, closed);
  }

  /** Counts a try before it is looked at, so that many at one instant are not many looks; false where none is left. */
  async charge(id: string): Promise<boolean> {
    const { affected } = await this.unitOfWork.manager
      .createQueryBuilder()
      .update(PacketLinkRow)
      .set({ triesLeft: () => 'tries_left - 1' })
      .where('id = :id AND tries_left > 0 AND closed IS NULL', { id })
      .execute();
    return affected === 1;
  }
}
