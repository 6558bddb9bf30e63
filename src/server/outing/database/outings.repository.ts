import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { IsNull } from 'typeorm';
import { uuid } from '../../../../shared/wire/record-requests.dto.js';
import type { Actor } from '../../accounts/accounts.api.js';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { OutingEventRow, type OutingSubject } from './outing-event.row.js';
import { OutingRow } from './outing.row.js';

/** Outings of whose renters something is kept. */
export interface MonthOfOutings {
  /** `2024-06`, by the time of return in UTC. */
  readonly month: string;
  readonly count: number;
  /** All their versions together: higher after any change of any of them. */
  readonly version: number;
}

/** Something that happened, without who and when. */
export interface OutingHappening {
  readonly subject: OutingSubject;
  readonly subjectId: string;
  readonly kind: string;
  readonly document: object;
}

/** Outings, and what happened in out and back. */
@Injectable()
export class OutingsRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** Null for an id that cannot be one. */
  async find(id: string): Promise<OutingRow | null> {
    if (uuid.faultOf(id) !== null) return null;
    return this.unitOfWork.manager.findOneBy(OutingRow, { id });
  }

  /** Outings that nobody wrote back. */
  out(): Promise<OutingRow[]> {
    return this.unitOfWork.manager.find(OutingRow, {
      where: { backAt: IsNull() },
      order: { createdAt: 'DESC', id: 'ASC' },
    });
  }

  /** The outing that a craft is out on. */
  outOf(craftId: string): Promise<OutingRow | null> {
    return this.unitOfWork.manager.findOneBy(OutingRow, { craftId, backAt: IsNull() });
  }

  /** When each craft last came back, by its id. */
  async lastBack(): Promise<Map<string, string>> {
    const rows = await this.unitOfWork.manager
      .createQueryBuilder(OutingRow, 'outing')
      .select('outing.craftId', 'craft')
      .addSelect('MAX(outing.backAt)', 'back')
      .where('outing.backAt IS NOT NULL')
      .groupBy('outing.craftId')
      .getRawMany<{ craft: string; back: string }>();
    return new Map(rows.map(({ craft, back }) => [craft, back]));
  }

  async add(row: OutingRow): Promise<void> {
    await this.unitOfWork.manager.insert(OutingRow, row);
  }

  async change({ id, ...changed }: Partial<OutingRow> & { id: string }): Promise<void> {
    await this.unitOfWork.manager.update(OutingRow, { id }, changed);
  }

  /** Of craft that are back, by the month in UTC. */
  async monthsWithDetails(): Promise<MonthOfOutings[]> {
    const rows = await this.withDetails()
      .select('SUBSTR(outing.backAt, 1, 7)', 'month')
      .addSelect('COUNT(*)', 'count')
      .addSelect('SUM(outing.version)', 'version')
      .groupBy('SUBSTR(outing.backAt, 1, 7)')
      .orderBy('month')
      .getRawMany<{ month: string; count: string; version: string }>();
    return rows.map(({ month, count, version }) => ({
      month,
      count: Number(count),
      version: Number(version),
    }));
  }

  withDetailsOf(month: string): Promise<OutingRow[]> {
    return this.withDetails()
      .andWhere('SUBSTR(outing.backAt, 1, 7) = :month', { month })
      .orderBy('outing.backAt')
      .addOrderBy('outing.id')
      .getMany();
  }

  async dropDetails(id: string, updatedAt: string): Promise<void> {
    await this.unitOfWork.manager
      .createQueryBuilder()
      .update(OutingRow)
      .set({ details: {}, updatedAt, version: () => 'version + 1' })
      .where('id = :id', { id })
      .execute();
  }

  /** Takes what was said away for good; that something happened, when and by whom, stays. */
  async dropWords(subject: OutingSubject, subjectId: string): Promise<void> {
    await this.unitOfWork.manager.update(OutingEventRow, { subject, subjectId }, { document: {} });
  }

  private withDetails() {
    return this.unitOfWork.manager
      .createQueryBuilder(OutingRow, 'outing')
      .where("outing.backAt IS NOT NULL AND outing.details <> '{}'");
  }

  eventsOf(subject: OutingSubject, subjectId: string): Promise<OutingEventRow[]> {
    return this.unitOfWork.manager.find(OutingEventRow, {
      where: { subject, subjectId },
      order: { sequence: 'ASC' },
    });
  }

  /** The id of what an event happened to. */
  async subjectOf(eventId: string): Promise<string | null> {
    return (await this.unitOfWork.manager.findOneBy(OutingEventRow, { id: eventId }))?.subjectId ?? null;
  }

  async note(happening: OutingHappening, actor: Actor, at: string, id: string = randomUUID()): Promise<void> {
    const { subject, subjectId } = happening;
    const before = await this.unitOfWork.manager.countBy(OutingEventRow, { subject, subjectId });
    await this.unitOfWork.manager.insert(OutingEventRow, {
      ...happening,
      id,
      sequence: before + 1,
      at,
      person: actor.personName,
      accountId: actor.accountId ?? null,
      device: actor.deviceName ?? null,
    });
  }
}
