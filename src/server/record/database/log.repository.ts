import { Injectable } from '@nestjs/common';
import { EMPTY_FRONTIER, type Frontier } from '../../../../shared/proof/merkle-frontier.js';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { AmendmentRow, RecordLogRow, ReferenceYearRow } from './amendment.row.js';

const THE_LOG = 'log';

/** How far the log has grown. */
export interface LogState {
  readonly frontier: Frontier;
  readonly lastAt: string | null;
}

/** The growing end of the log. */
@Injectable()
export class LogRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /**
   * Takes the turn to write to the record. First in a unit of work: on PostgreSQL, where a statement before it would
   * fix what the unit sees, and everyone who waited would then be refused and do the work again (LOCK in its manual).
   */
  async lock(): Promise<void> {
    const { manager } = this.unitOfWork;
    if (manager.connection.options.type === 'postgres') {
      await manager.query('LOCK TABLE "record_log" IN EXCLUSIVE MODE');
    }
  }

  async state(): Promise<LogState> {
    const row = await this.unitOfWork.manager.findOneBy(RecordLogRow, { id: THE_LOG });
    if (row === null) return { frontier: EMPTY_FRONTIER, lastAt: null };
    return { frontier: { size: row.size, nodes: row.nodes }, lastAt: row.lastAt };
  }

  async save({ size, nodes }: Frontier, root: string, lastAt: string): Promise<void> {
    const { manager } = this.unitOfWork;
    const row = { size, nodes: [...nodes], root, lastAt };
    const { affected } = await manager.update(RecordLogRow, { id: THE_LOG }, row);
    if (affected !== 1) await manager.insert(RecordLogRow, { id: THE_LOG, ...row });
  }

  async add(rows: AmendmentRow[]): Promise<void> {
    // TypeORM's type of a partial row has no end for JSON that holds JSON: hence the plain object.
    await this.unitOfWork.manager.insert<object>(AmendmentRow, rows);
  }

  /** The next number of a year, from 1. */
  async nextOfYear(year: number): Promise<number> {
    const { manager } = this.unitOfWork;
    const { affected } = await manager.increment(ReferenceYearRow, { year }, 'last', 1);
    if (affected !== 1) await manager.insert(ReferenceYearRow, { year, last: 1 });
    return (await manager.findOneByOrFail(ReferenceYearRow, { year })).last;
  }

  /** What the log says of itself, for its check. */
  async head(): Promise<{ size: number; root: string } | null> {
    const row = await this.unitOfWork.manager.findOneBy(RecordLogRow, { id: THE_LOG });
    return row && { size: row.size, root: row.root };
  }
}
