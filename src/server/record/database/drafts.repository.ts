import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { DraftRow } from './aside.row.js';

type Place = Pick<DraftRow, 'incidentId' | 'section' | 'holder'>;

@Injectable()
export class DraftsRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  ofHolder(incidentId: string, holder: string): Promise<DraftRow[]> {
    return this.unitOfWork.manager.find(DraftRow, {
      where: { incidentId, holder },
      order: { section: 'ASC' },
    });
  }

  /** Everybody's of one section. */
  ofSection(incidentId: string, section: string): Promise<DraftRow[]> {
    return this.unitOfWork.manager.findBy(DraftRow, { incidentId, section });
  }

  /** Everybody's of some incidents. */
  ofIncidents(incidentIds: readonly string[]): Promise<DraftRow[]> {
    return this.unitOfWork.manager.findBy(DraftRow, { incidentId: In([...incidentIds]) });
  }

  async save(row: DraftRow): Promise<void> {
    const { incidentId, section, holder, ...changed } = row;
    const { manager } = this.unitOfWork;
    const { affected } = await manager.update<object>(DraftRow, { incidentId, section, holder }, changed);
    if (affected !== 1) await manager.insert<object>(DraftRow, row);
  }

  async remove({ incidentId, section, holder }: Place): Promise<void> {
    await this.unitOfWork.manager.delete(DraftRow, { incidentId, section, holder });
  }
}
