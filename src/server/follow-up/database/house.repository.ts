import { Injectable } from '@nestjs/common';
import { uuid } from '../../../../shared/wire/record-requests.dto.js';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import type { PageRequest } from '../../platform/http/cursor.js';
import { AdoptedHouseRulesRow } from './adopted-house-rules.row.js';
import { NoticeAddressRow } from './notice-address.row.js';
import { ShiftHandOverRow } from './shift-hand-over.row.js';

/** What the house keeps for itself: hand-overs of shifts, its own rules, and where its people are told. */
@Injectable()
export class HouseRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** One more than the page holds, the newest first. */
  handOvers({ limit, after }: PageRequest): Promise<ShiftHandOverRow[]> {
    const query = this.unitOfWork.manager
      .createQueryBuilder(ShiftHandOverRow, 'shift')
      .orderBy('shift.createdAt', 'DESC')
      .addOrderBy('shift.id')
      .limit(limit + 1);
    if (after !== null) {
      query.where('(shift.createdAt < :sort OR (shift.createdAt = :sort AND shift.id > :id))', { ...after });
    }
    return query.getMany();
  }

  /** Null for an id that cannot be one. */
  async handOver(id: string): Promise<ShiftHandOverRow | null> {
    if (uuid.faultOf(id) !== null) return null;
    return this.unitOfWork.manager.findOneBy(ShiftHandOverRow, { id });
  }

  async addHandOver(row: ShiftHandOverRow): Promise<void> {
    await this.unitOfWork.manager.insert(ShiftHandOverRow, row);
  }

  async changeHandOver({ id, ...changed }: Partial<ShiftHandOverRow> & { id: string }): Promise<void> {
    await this.unitOfWork.manager.update(ShiftHandOverRow, { id }, changed);
  }

  /** All rules that were ever adopted, the first written first. */
  rules(): Promise<AdoptedHouseRulesRow[]> {
    return this.unitOfWork.manager.find(AdoptedHouseRulesRow, { order: { recordedAt: 'ASC', id: 'ASC' } });
  }

  async addRules(row: AdoptedHouseRulesRow): Promise<void> {
    await this.unitOfWork.manager.insert(AdoptedHouseRulesRow, row);
  }

  address(accountId: string): Promise<NoticeAddressRow | null> {
    return this.unitOfWork.manager.findOneBy(NoticeAddressRow, { id: accountId });
  }

  async keepAddress(row: NoticeAddressRow): Promise<void> {
    await this.unitOfWork.manager.upsert(NoticeAddressRow, row, ['id']);
  }
}
