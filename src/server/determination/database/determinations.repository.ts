import { Injectable } from '@nestjs/common';
import { LessThan, LessThanOrEqual } from 'typeorm';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { DeterminationRow, LawAppliedRow } from './determination.row.js';

const LAW = 'law';

@Injectable()
export class DeterminationsRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** The latest; as of a moment, the latest that had been made by then. */
  current(incidentId: string, at?: string): Promise<DeterminationRow | null> {
    return this.unitOfWork.manager.findOne(DeterminationRow, {
      where: { incidentId, ...(at === undefined ? {} : { madeAt: LessThanOrEqual(at) }) },
      order: { sequence: 'DESC' },
    });
  }

  find(incidentId: string, sequence: number): Promise<DeterminationRow | null> {
    return this.unitOfWork.manager.findOneBy(DeterminationRow, { incidentId, sequence });
  }

  /** Latest first. */
  page(incidentId: string, before: number | null, take: number): Promise<DeterminationRow[]> {
    return this.unitOfWork.manager.find(DeterminationRow, {
      where: { incidentId, ...(before === null ? {} : { sequence: LessThan(before) }) },
      order: { sequence: 'DESC' },
      take,
    });
  }

  all(incidentId: string): Promise<DeterminationRow[]> {
    return this.unitOfWork.manager.findBy(DeterminationRow, { incidentId });
  }

  /** For words that were withdrawn from the record; nothing else of a determination changes. */
  async setWords(
    id: string,
    { facts, determination }: Pick<DeterminationRow, 'facts' | 'determination'>,
  ): Promise<void> {
    await this.unitOfWork.manager.update<object>(DeterminationRow, { id }, { facts, determination });
  }

  // TypeORM's type of a partial row has no end for JSON that holds JSON: hence the plain object.
  async add(row: DeterminationRow): Promise<void> {
    await this.unitOfWork.manager.insert<object>(DeterminationRow, row);
  }

  async lawApplied(): Promise<string | null> {
    return (await this.unitOfWork.manager.findOneBy(LawAppliedRow, { id: LAW }))?.digest ?? null;
  }

  async setLawApplied(digest: string, appliedAt: string): Promise<void> {
    await this.unitOfWork.manager.upsert(LawAppliedRow, { id: LAW, digest, appliedAt }, ['id']);
  }
}
