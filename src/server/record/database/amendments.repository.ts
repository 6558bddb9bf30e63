import { Injectable } from '@nestjs/common';
import { LessThanOrEqual, MoreThan } from 'typeorm';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { AmendmentRow, type ChangeOpening } from './amendment.row.js';

const CHUNK = 1_000;

export interface AmendmentsPage {
  readonly sections: readonly string[];
  readonly pointer: string | undefined;
  /** The sequence before which the page begins. */
  readonly before: number | null;
  readonly take: number;
}

/** The amendments, read back. */
@Injectable()
export class AmendmentsRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** Of one incident, oldest first; up to a moment, if one is given. */
  ofIncident(incidentId: string, until?: string): Promise<AmendmentRow[]> {
    return this.unitOfWork.manager.find(AmendmentRow, {
      where: { incidentId, ...(until === undefined ? {} : { madeAt: LessThanOrEqual(until) }) },
      order: { sequence: 'ASC' },
    });
  }

  ofSection(incidentId: string, section: string): Promise<AmendmentRow[]> {
    return this.unitOfWork.manager.find(AmendmentRow, {
      where: { incidentId, section },
      order: { sequence: 'ASC' },
    });
  }

  /** A page of those of some sections of one incident that changed a field or what is below it, newest first. */
  page(incidentId: string, { sections, pointer, before, take }: AmendmentsPage): Promise<AmendmentRow[]> {
    const query = this.unitOfWork.manager
      .createQueryBuilder(AmendmentRow, 'amendment')
      .where('amendment.incidentId = :incidentId', { incidentId })
      .andWhere('amendment.section IN (:...sections)', { sections })
      .orderBy('amendment.sequence', 'DESC')
      .limit(take);
    if (before !== null) query.andWhere('amendment.sequence < :before', { before });
    if (pointer !== undefined) {
      const start = `%"path":${JSON.stringify(pointer).slice(0, -1)}`.replaceAll(/(?!^)[!%_]/g, '!$&');
      query.andWhere(
        "(amendment.changes LIKE :field ESCAPE '!' OR amendment.changes LIKE :below ESCAPE '!')",
        {
          field: `${start}"%`,
          below: `${start}/%`,
        },
      );
    }
    return query.getMany();
  }

  /** Takes openings away for good, or puts back those that stay. */
  async setOpenings(sequence: number, openings: ChangeOpening[]): Promise<void> {
    await this.unitOfWork.manager.update<object>(AmendmentRow, { sequence }, { openings });
  }

  /** Takes the words of a reason away for good. */
  async dropReason(sequence: number): Promise<void> {
    await this.unitOfWork.manager.update<object>(AmendmentRow, { sequence }, { reasonOpening: null });
  }

  find(incidentId: string, sequence: number): Promise<AmendmentRow | null> {
    return this.unitOfWork.manager.findOneBy(AmendmentRow, { incidentId, sequence });
  }

  /** The leaves of the log in their order. */
  async leafHashes(): Promise<string[]> {
    const rows = await this.unitOfWork.manager.find(AmendmentRow, {
      select: { leafHash: true, sequence: true },
      order: { sequence: 'ASC' },
    });
    return rows.map(({ leafHash }) => leafHash);
  }

  /** Every amendment of every incident, oldest first. */
  async *all(): AsyncGenerator<AmendmentRow> {
    for (let last = -(2 ** 31); ;) {
      const rows = await this.unitOfWork.manager.find(AmendmentRow, {
        where: { sequence: MoreThan(last) },
        order: { sequence: 'ASC' },
        take: CHUNK,
      });
      yield* rows;
      const end = rows.at(-1);
      if (end === undefined || rows.length < CHUNK) return;
      last = end.sequence;
    }
  }
}
