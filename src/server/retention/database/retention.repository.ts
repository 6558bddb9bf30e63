import { Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import type { PageRequest } from '../../platform/http/cursor.js';
import { RetentionChoiceRow, RetentionDecisionRow } from './retention.row.js';

/** Decisions and choices; both are only ever added. */
@Injectable()
export class RetentionRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  async addDecision(row: RetentionDecisionRow): Promise<void> {
    await this.unitOfWork.manager.insert(RetentionDecisionRow, row);
  }

  find(id: string): Promise<RetentionDecisionRow | null> {
    return this.unitOfWork.manager.findOneBy(RetentionDecisionRow, { id });
  }

  /** Oldest first. */
  decisions(): Promise<RetentionDecisionRow[]> {
    return this.unitOfWork.manager.find(RetentionDecisionRow, { order: { at: 'ASC', id: 'ASC' } });
  }

  /** One more than the page holds, the latest first. */
  page({ limit, after }: PageRequest): Promise<RetentionDecisionRow[]> {
    const query = this.unitOfWork.manager
      .createQueryBuilder(RetentionDecisionRow, 'made')
      .orderBy('made.at', 'DESC')
      .addOrderBy('made.id', 'DESC')
      .limit(limit + 1);
    if (after !== null) query.where('(made.at < :sort OR (made.at = :sort AND made.id < :id))', { ...after });
    return query.getMany();
  }

  async addChoice(row: RetentionChoiceRow): Promise<void> {
    await this.unitOfWork.manager.insert(RetentionChoiceRow, row);
  }

  /** The latest of each period. */
  async choices(): Promise<Map<string, RetentionChoiceRow>> {
    const rows = await this.unitOfWork.manager.find(RetentionChoiceRow, { order: { version: 'ASC' } });
    return new Map(rows.map((row) => [row.period, row]));
  }
}
