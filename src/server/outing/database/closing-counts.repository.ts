import { Injectable } from '@nestjs/common';
import { IsNull, Not } from 'typeorm';
import { uuid } from '../../../../shared/wire/record-requests.dto.js';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { ClosingCountRow } from './closing-count.row.js';

/** As many of the latest counts as tell where craft are: a week of some stations. */
const LATEST = 30;

/** Counts at closing. */
@Injectable()
export class ClosingCountsRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** Null for an id that cannot be one. */
  async find(id: string): Promise<ClosingCountRow | null> {
    if (uuid.faultOf(id) !== null) return null;
    return this.unitOfWork.manager.findOneBy(ClosingCountRow, { id });
  }

  /** The count of a station, or of the whole fleet, on a day that nobody has closed. */
  openAt(stationId: string | null, day: string): Promise<ClosingCountRow | null> {
    return this.unitOfWork.manager.findOneBy(ClosingCountRow, {
      stationId: stationId ?? IsNull(),
      day,
      closedAt: IsNull(),
    });
  }

  /** The latest that were opened, the newest first. */
  latest(): Promise<ClosingCountRow[]> {
    return this.unitOfWork.manager.find(ClosingCountRow, { order: { openedAt: 'DESC' }, take: LATEST });
  }

  /** The latest that were closed, the newest first. */
  closed(): Promise<ClosingCountRow[]> {
    return this.unitOfWork.manager.find(ClosingCountRow, {
      where: { closedAt: Not(IsNull()) },
      order: { closedAt: 'DESC' },
      take: LATEST,
    });
  }

  async add(row: ClosingCountRow): Promise<void> {
    await this.unitOfWork.manager.insert(ClosingCountRow, row);
  }

  async change({ id, ...changed }: Partial<ClosingCountRow> & { id: string }): Promise<void> {
    await this.unitOfWork.manager.update(ClosingCountRow, { id }, changed);
  }
}
