import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { ClaimStartRow } from './claim-start.row.js';

/** When claims were first made in writing. */
@Injectable()
export class ClaimStartsRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** The earliest moment ever taken for it. */
  async earliest(incidentId: string): Promise<string | null> {
    const first = await this.unitOfWork.manager
      .createQueryBuilder(ClaimStartRow, 'start')
      .where('start.incidentId = :incidentId', { incidentId })
      .orderBy('start.receivedAt')
      .limit(1)
      .getOne();
    return first?.receivedAt ?? null;
  }

  async add(incidentId: string, receivedAt: string, recordedAt: string): Promise<void> {
    const row: ClaimStartRow = { id: randomUUID(), incidentId, receivedAt, recordedAt };
    await this.unitOfWork.manager.insert(ClaimStartRow, row);
  }
}
