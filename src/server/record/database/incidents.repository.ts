import { Injectable } from '@nestjs/common';
import { Brackets, In, MoreThan, type SelectQueryBuilder } from 'typeorm';
import type { IncidentStatus } from '../../../../shared/record/incident-record.js';
import type { Cursor } from '../../platform/http/cursor.js';
import { withWords } from '../../platform/database/with-words.js';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { CounselAssignmentRow } from './assignment.row.js';
import { IncidentRow, SectionRow } from './incident.row.js';

export interface IncidentFilter {
  status?: IncidentStatus | undefined;
  openedFrom?: string | undefined;
  openedUntil?: string | undefined;
  /** Each word of it must be in some section, whole or as a beginning. */
  q?: string | undefined;
  /** Only those that this account of counsel was assigned. */
  counselAccount?: string | undefined;
}

@Injectable()
export class IncidentsRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  find(id: string): Promise<IncidentRow | null> {
    return this.unitOfWork.manager.findOneBy(IncidentRow, { id });
  }

  async references(ids: readonly string[]): Promise<Map<string, string>> {
    const rows = await this.unitOfWork.manager.find(IncidentRow, {
      select: { id: true, reference: true },
      where: { id: In([...ids]) },
    });
    return new Map(rows.map(({ id, reference }) => [id, reference]));
  }

  exists(id: string): Promise<boolean> {
    return this.unitOfWork.manager.existsBy(IncidentRow, { id });
  }

  async add(row: IncidentRow): Promise<void> {
    await this.unitOfWork.manager.insert(IncidentRow, row);
  }

  async update({ id, ...changed }: Partial<IncidentRow> & { id: string }): Promise<void> {
    await this.unitOfWork.manager.update(IncidentRow, { id }, changed);
  }

  section(incidentId: string, section: string): Promise<SectionRow | null> {
    return this.unitOfWork.manager.findOneBy(SectionRow, { incidentId, section });
  }

  sections(incidentId: string): Promise<SectionRow[]> {
    return this.unitOfWork.manager.find(SectionRow, { where: { incidentId }, order: { section: 'ASC' } });
  }

  sectionsOf(incidentIds: readonly string[]): Promise<SectionRow[]> {
    return this.unitOfWork.manager.findBy(SectionRow, { incidentId: In([...incidentIds]) });
  }

  ofIds(ids: readonly string[]): Promise<IncidentRow[]> {
    return this.unitOfWork.manager.findBy(IncidentRow, { id: In([...ids]) });
  }

  // TypeORM's type of a partial row has no end for JSON that holds JSON: hence the plain object.
  async addSections(rows: SectionRow[]): Promise<void> {
    await this.unitOfWork.manager.insert<object>(SectionRow, rows);
  }

  async updateSection({ incidentId, section, ...changed }: SectionRow): Promise<void> {
    await this.unitOfWork.manager.update<object>(SectionRow, { incidentId, section }, changed);
  }

  isAssigned(incidentId: string, accountId: string): Promise<boolean> {
    return this.unitOfWork.manager.existsBy(CounselAssignmentRow, { incidentId, accountId });
  }

  /** Ids of the incidents that an account of counsel reads. */
  async assignedTo(accountId: string): Promise<string[]> {
    const rows = await this.unitOfWork.manager.findBy(CounselAssignmentRow, { accountId });
    return rows.map(({ incidentId }) => incidentId);
  }

  /** One more than asked for, latest first. */
  list(filter: IncidentFilter, after: Cursor | null, limit: number): Promise<IncidentRow[]> {
    const query = this.unitOfWork.manager
      .createQueryBuilder(IncidentRow, 'i')
      .orderBy('i.openedAt', 'DESC')
      .addOrderBy('i.id', 'DESC')
      .limit(limit + 1);
    const { status, openedFrom, openedUntil, q, counselAccount } = filter;
    if (status !== undefined) query.andWhere('i.status = :status', { status });
    if (openedFrom !== undefined) query.andWhere('i.openedAt >= :openedFrom', { openedFrom });
    if (openedUntil !== undefined) query.andWhere('i.openedAt < :openedUntil', { openedUntil });
    if (q !== undefined) withWords(query, SECTION_WORDS, q);
    if (counselAccount !== undefined) assignedTo(query, counselAccount);
    if (after !== null) behind(query, after);
    return query.getMany();
  }

  async ids(after: string | null, limit: number): Promise<string[]> {
    const rows = await this.unitOfWork.manager.find(IncidentRow, {
      select: { id: true },
      where: after === null ? {} : { id: MoreThan(after) },
      order: { id: 'ASC' },
      take: limit,
    });
    return rows.map(({ id }) => id);
  }

  /** Every incident or section, for the check of the record. */
  allIncidents(): Promise<IncidentRow[]> {
    return this.unitOfWork.manager.find(IncidentRow, { order: { reference: 'ASC' } });
  }

  sectionsWithWords(): Promise<SectionRow[]> {
    const words = { words: true, incidentId: true, section: true, document: true } as const;
    const rest = { version: true, finished: true, latestAmendment: true, updatedAt: true } as const;
    return this.unitOfWork.manager.find(SectionRow, { select: { ...words, ...rest } });
  }
}

type Query = SelectQueryBuilder<IncidentRow>;

const SECTION_WORDS = { table: 'incident_section', column: 'words', owner: 'incident_id', id: 'i.id' };

function assignedTo(query: Query, counselAccount: string): void {
  const assignment = query
    .subQuery()
    .select('1')
    .from(CounselAssignmentRow, 'a')
    .where('a.incidentId = i.id')
    .andWhere('a.accountId = :counselAccount');
  query.andWhere(`EXISTS ${assignment.getQuery()}`, { counselAccount });
}

function behind(query: Query, { sort, id }: Cursor): void {
  query.andWhere(
    new Brackets((where) =>
      where
        .where('i.openedAt < :sort', { sort })
        .orWhere('(i.openedAt = :sort AND i.id < :afterId)', { sort, afterId: id }),
    ),
  );
}
