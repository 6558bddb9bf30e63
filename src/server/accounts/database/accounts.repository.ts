import { Injectable } from '@nestjs/common';
import { In, Not } from 'typeorm';
import type { Role } from '../../../../shared/kernel/role.js';
import type { Cursor, PageRequest } from '../../platform/http/cursor.js';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { AccountRow } from './account.row.js';

/** An account with what it is signed in to with. */
export type AccountSecrets = Pick<
  AccountRow,
  | 'id'
  | 'name'
  | 'signInName'
  | 'role'
  | 'active'
  | 'passwordHash'
  | 'passwordDue'
  | 'passwordExpiresAt'
  | 'pinHash'
>;

@Injectable()
export class AccountsRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  find(id: string): Promise<AccountRow | null> {
    return this.unitOfWork.manager.findOneBy(AccountRow, { id });
  }

  /** By sign-in name, in the form in which it is compared, or by id. */
  findSecrets(by: { signInKey: string } | { id: string }): Promise<AccountSecrets | null> {
    return this.unitOfWork.manager.findOne(AccountRow, {
      where: by,
      select: {
        id: true,
        name: true,
        signInName: true,
        role: true,
        active: true,
        passwordHash: true,
        passwordDue: true,
        passwordExpiresAt: true,
        pinHash: true,
      },
    });
  }

  /** One more than the page holds, by sign-in name. */
  page({ limit, after }: PageRequest): Promise<AccountRow[]> {
    const query = this.unitOfWork.manager
      .createQueryBuilder(AccountRow, 'account')
      .orderBy('account.signInKey')
      .limit(limit + 1);
    if (after !== null) query.where('account.signInKey > :sort', { sort: after.sort });
    return query.getMany();
  }

  async names(ids: readonly string[]): Promise<Map<string, string>> {
    const rows = await this.unitOfWork.manager.find(AccountRow, {
      select: { id: true, name: true },
      where: { id: In([...ids]) },
    });
    return new Map(rows.map(({ id, name }) => [id, name]));
  }

  activeOfRole(role: Role): Promise<AccountRow[]> {
    return this.unitOfWork.manager.find(AccountRow, {
      where: { role, active: true },
      order: { signInKey: 'ASC' },
    });
  }

  static cursorOf({ signInKey, id }: AccountRow): Cursor {
    return { sort: signInKey, id };
  }

  exists(): Promise<boolean> {
    return this.unitOfWork.manager.exists(AccountRow);
  }

  otherAdministratorExists(id: string): Promise<boolean> {
    return this.unitOfWork.manager.existsBy(AccountRow, {
      id: Not(id),
      role: 'administrator',
      active: true,
    });
  }

  async add(account: AccountRow): Promise<void> {
    await this.unitOfWork.manager.insert(AccountRow, account);
  }

  async change(id: string, change: Partial<AccountRow>): Promise<void> {
    await this.unitOfWork.manager.update(AccountRow, { id }, change);
  }
}
