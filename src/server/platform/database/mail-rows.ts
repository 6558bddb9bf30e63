import type { SelectQueryBuilder } from 'typeorm';
import type { MailState } from '../../../../shared/kernel/mail-state.js';
import type { PageRequest } from '../http/cursor.js';
import { MailDecisionRow, MailRow } from './mail.row.js';
import type { UnitOfWork } from './unit-of-work.js';

/** An earlier mail to the same address that is still on its way: mails to one person arrive in their order. */
const EARLIER = `EXISTS (SELECT 1 FROM mail earlier WHERE earlier.to_address = mail.to_address
  AND earlier.id < mail.id AND earlier.state IN ('queued', 'sending'))`;

export class MailRows {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  find(id: string): Promise<MailRow | null> {
    return this.unitOfWork.manager.findOneBy(MailRow, { id });
  }

  existsFor(causeKey: string): Promise<boolean> {
    return this.unitOfWork.manager.existsBy(MailRow, { causeKey });
  }

  async add(mail: MailRow): Promise<void> {
    await this.unitOfWork.manager.insert(MailRow, mail);
  }

  /** Of mails that are out or given up and still say something, by the month in which they were queued (UTC). */
  async monthsWithText(): Promise<{ month: string; count: number; version: number }[]> {
    const rows = await this.withText()
      .select('SUBSTR(mail.queuedAt, 1, 7)', 'month')
      .addSelect('COUNT(*)', 'count')
      .addSelect('SUM(mail.version)', 'version')
      .groupBy('SUBSTR(mail.queuedAt, 1, 7)')
      .orderBy('month')
      .getRawMany<{ month: string; count: string; version: string }>();
    return rows.map(({ month, count, version }) => ({
      month,
      count: Number(count),
      version: Number(version),
    }));
  }

  withTextOf(month: string): Promise<MailRow[]> {
    return this.withText().andWhere('SUBSTR(mail.queuedAt, 1, 7) = :month', { month }).getMany();
  }

  /** Takes addresses and words away for good; that it was sent, and for what cause, stays, so that it is never sent again. */
  async dropText(ids: readonly string[], changedAt: string): Promise<void> {
    for (const id of ids) {
      await this.unitOfWork.manager
        .createQueryBuilder()
        .update(MailRow)
        .set({ toAddress: '', subject: '', body: '', words: null, changedAt, version: () => 'version + 1' })
        .where('id = :id', { id })
        .execute();
    }
  }

  private withText(): SelectQueryBuilder<MailRow> {
    return this.query().where("mail.toAddress <> '' AND mail.state NOT IN ('queued', 'sending')");
  }

  /** The first that may be tried now. */
  nextDue(now: string): Promise<MailRow | null> {
    return this.inLine().andWhere('mail.nextTryAt <= :now', { now }).orderBy('mail.id').limit(1).getOne();
  }

  /** When the next one may be tried; null when none waits. */
  async nextTryAt(): Promise<string | null> {
    const next = await this.inLine().orderBy('mail.nextTryAt').limit(1).getOne();
    return next?.nextTryAt ?? null;
  }

  /** Those whose try was begun by somebody who can no longer be at it. */
  abandoned(now: string): Promise<MailRow[]> {
    return this.query()
      .where(`mail.state = 'sending'`)
      .andWhere('mail.claimedUntil <= :now', { now })
      .orderBy('mail.id')
      .getMany();
  }

  /** Changes a mail that is still as it was read; false when it has been changed meanwhile. */
  async change({ id, version }: MailRow, change: Partial<MailRow>): Promise<boolean> {
    const { affected } = await this.unitOfWork.manager
      .createQueryBuilder()
      .update(MailRow)
      .set({ ...change, version: version + 1 })
      .where('id = :id AND version = :version', { id, version })
      .execute();
    return affected === 1;
  }

  /** One more than the page holds, newest first. */
  page({ limit, after }: PageRequest, state: MailState | undefined): Promise<MailRow[]> {
    const query = this.query()
      .orderBy('mail.id', 'DESC')
      .limit(limit + 1);
    if (state !== undefined) query.andWhere('mail.state = :state', { state });
    if (after !== null) query.andWhere('mail.id < :id', { id: after.id });
    return query.getMany();
  }

  async addDecision(decision: MailDecisionRow): Promise<void> {
    await this.unitOfWork.manager.insert(MailDecisionRow, decision);
  }

  /** Oldest first. */
  async decisionsOn(mailIds: readonly string[]): Promise<MailDecisionRow[]> {
    if (mailIds.length === 0) return [];
    return this.unitOfWork.manager
      .createQueryBuilder(MailDecisionRow, 'decision')
      .where('decision.mailId IN (:...mailIds)', { mailIds })
      .orderBy('decision.decidedAt')
      .addOrderBy('decision.id')
      .getMany();
  }

  private query(): SelectQueryBuilder<MailRow> {
    return this.unitOfWork.manager.createQueryBuilder(MailRow, 'mail');
  }

  private inLine(): SelectQueryBuilder<MailRow> {
    return this.query().where(`mail.state = 'queued'`).andWhere(`NOT ${EARLIER}`);
  }
}
