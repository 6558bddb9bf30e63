import { Injectable } from '@nestjs/common';
import { Brackets, In, IsNull } from 'typeorm';
import { uuid } from '../../../../shared/wire/record-requests.dto.js';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { NotBackRow } from './not-back.row.js';

/** Craft that are not back. */
@Injectable()
export class NotBackRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** Null for an id that cannot be one. */
  async find(id: string): Promise<NotBackRow | null> {
    if (uuid.faultOf(id) !== null) return null;
    return this.unitOfWork.manager.findOneBy(NotBackRow, { id });
  }

  /** The one of a craft that has not ended. */
  openOf(craftId: string): Promise<NotBackRow | null> {
    return this.unitOfWork.manager.findOneBy(NotBackRow, { craftId, ended: IsNull() });
  }

  /** Those that have not ended, and those whose ending waits for a word whether it is an incident; the oldest first. */
  open(waiting: readonly string[]): Promise<NotBackRow[]> {
    return this.unitOfWork.manager
      .createQueryBuilder(NotBackRow, 'lost')
      .where('lost.ended IS NULL')
      .orWhere(
        new Brackets((query) =>
          query
            .where('lost.ended IN (:...waiting)', { waiting })
            .andWhere('lost.incidentId IS NULL')
            .andWhere('lost.notIncident IS NULL'),
        ),
      )
      .orderBy('lost.openedAt')
      .addOrderBy('lost.id')
      .getMany();
  }

  async ofOutings(outingIds: readonly string[]): Promise<NotBackRow[]> {
    if (outingIds.length === 0) return [];
    return this.unitOfWork.manager.findBy(NotBackRow, { outingId: In([...outingIds]) });
  }

  ofIncident(incidentId: string): Promise<NotBackRow[]> {
    return this.unitOfWork.manager.find(NotBackRow, { where: { incidentId }, order: { openedAt: 'ASC' } });
  }

  /** When somebody last said of a craft that it was late and is here, by the id of the craft. */
  async lastLate(): Promise<Map<string, string>> {
    const ended = await this.unitOfWork.manager.find(NotBackRow, {
      where: { ended: 'late' },
      order: { endedAt: 'ASC' },
    });
    return new Map(ended.flatMap(({ craftId, endedAt }) => (endedAt === null ? [] : [[craftId, endedAt]])));
  }

  async add(row: NotBackRow): Promise<void> {
    await this.unitOfWork.manager.insert(NotBackRow, row);
  }

  async change({ id, ...changed }: Partial<NotBackRow> & { id: string }): Promise<void> {
    await this.unitOfWork.manager.update(NotBackRow, { id }, changed);
  }
}
