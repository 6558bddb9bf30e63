import { Injectable } from '@nestjs/common';
import type { Role } from '../../../shared/kernel/role.js';
import type { AccountRow } from './database/account.row.js';
import { AccountsRepository } from './database/accounts.repository.js';

/** As much of an account as other modules need to name somebody. */
export type FoundAccount = Pick<AccountRow, 'id' | 'name' | 'role'>;

/** Who has an account, for other modules; closed accounts are nobody's. */
@Injectable()
export class AccountFinder {
  constructor(private readonly accounts: AccountsRepository) {}

  async find(id: string): Promise<FoundAccount | null> {
    const account = await this.accounts.find(id);
    return account?.active === true ? foundOf(account) : null;
  }

  /** Names by id, of closed accounts too: what somebody had stays theirs until it is given on. */
  names(ids: readonly string[]): Promise<Map<string, string>> {
    return this.accounts.names(ids);
  }

  /** Everybody of a role, by sign-in name. */
  async ofRole(role: Role): Promise<FoundAccount[]> {
    return (await this.accounts.activeOfRole(role)).map(foundOf);
  }
}

function foundOf({ id, name, role }: AccountRow): FoundAccount {
  return { id, name, role };
}
