import { Injectable } from '@nestjs/common';
import { IsNull } from 'typeorm';
import type { Role } from '../../../../shared/kernel/role.js';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { AccountRow } from './account.row.js';
import { SessionRow } from './session.row.js';

/** A session that has not ended, and the person whose it is. */
export interface OpenSession {
  readonly id: string;
  readonly accountId: string;
  readonly personName: string;
  readonly role: Role;
  readonly passwordDue: boolean;
  readonly deviceId: string | null;
  readonly createdAt: string;
  readonly lastUsedAt: string;
  readonly expiresAt: string;
}

@Injectable()
export class SessionsRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  async add(session: SessionRow): Promise<void> {
    await this.unitOfWork.manager.insert(SessionRow, session);
  }

  /** Of an account that may still be used; whether the session has expired is for the caller to see. */
  async findOpen(tokenHash: string): Promise<OpenSession | null> {
    const { manager } = this.unitOfWork;
    const session = await manager.findOneBy(SessionRow, { tokenHash, endedAt: IsNull() });
    if (session === null) return null;
    const account = await manager.findOneBy(AccountRow, { id: session.accountId, active: true });
    if (account === null) return null;
    const { id, accountId, deviceId, createdAt, lastUsedAt, expiresAt } = session;
    const { name: personName, role, passwordDue } = account;
    return { id, accountId, personName, role, passwordDue, deviceId, createdAt, lastUsedAt, expiresAt };
  }

  async touch(id: string, lastUsedAt: string, expiresAt: string): Promise<void> {
    await this.unitOfWork.manager.update(SessionRow, { id }, { lastUsedAt, expiresAt });
  }

  end(id: string, endedAt: string): Promise<void> {
    return this.endWhere('id = :id', { id }, endedAt);
  }

  endAllOf(accountId: string, endedAt: string, exceptId = ''): Promise<void> {
    return this.endWhere('account_id = :accountId AND id <> :exceptId', { accountId, exceptId }, endedAt);
  }

  endAllOn(deviceId: string, endedAt: string): Promise<void> {
    return this.endWhere('device_id = :deviceId', { deviceId }, endedAt);
  }

  /** Written out: where an update looks for a null, TypeORM would hand that search to the column as its value. */
  private async endWhere(which: string, values: Record<string, string>, endedAt: string): Promise<void> {
    await this.unitOfWork.manager
      .createQueryBuilder()
      .update(SessionRow)
      .set({ endedAt })
      .where(`ended_at IS NULL AND ${which}`, values)
      .execute();
  }
}
