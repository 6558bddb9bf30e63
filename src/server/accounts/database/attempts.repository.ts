import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { AttemptRow } from './attempt.row.js';

@Injectable()
export class AttemptsRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** When the tries at this were made, the oldest first. */
  async timesOf(subject: string): Promise<string[]> {
    const rows = await this.unitOfWork.manager.find(AttemptRow, {
      where: { subject },
      order: { madeAt: 'ASC' },
    });
    return rows.map(({ madeAt }) => madeAt);
  }

  async add(subject: string, madeAt: string): Promise<string> {
    const id = randomUUID();
    await this.unitOfWork.manager.insert(AttemptRow, { id, subject, madeAt });
    return id;
  }

  async forgetUntil(instant: string): Promise<void> {
    await this.unitOfWork.manager
      .createQueryBuilder()
      .delete()
      .from(AttemptRow)
      .where('made_at <= :instant', { instant })
      .execute();
  }

  async forget(ids: readonly string[]): Promise<void> {
    await this.unitOfWork.manager.delete(AttemptRow, { id: In([...ids]) });
  }

  async forgetSubject(subject: string): Promise<void> {
    await this.unitOfWork.manager.delete(AttemptRow, { subject });
  }
}
