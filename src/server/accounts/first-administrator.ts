import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { newPasswordFault } from '../../../shared/wire/accounts-secrets.js';
import { Clock } from '../platform/clock.js';
import { ConfigError } from '../platform/config.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { AccountsRepository } from './database/accounts.repository.js';
import { Passwords } from './passwords.js';
import { signInKey } from './sign-in-key.js';

export interface FirstAdministratorConfig {
  readonly name: string;
  readonly password: string;
}

/** Where there is no account yet, nobody could make one: the first administrator comes from outside. */
@Injectable()
export class FirstAdministrator {
  constructor(
    private readonly unitOfWork: UnitOfWork,
    private readonly accounts: AccountsRepository,
    private readonly passwords: Passwords,
    private readonly clock: Clock,
  ) {}

  isMissing(): Promise<boolean> {
    return this.accounts.exists().then((exists) => !exists);
  }

  /**
   * Makes the first administrator unless there is any account; tells whether it did.
   * @throws ConfigError for a password that nobody may have
   */
  async make({ name, password }: FirstAdministratorConfig): Promise<boolean> {
    if (!(await this.isMissing())) return false;
    const fault = newPasswordFault(password, { name, signInName: name });
    if (fault !== null) throw new ConfigError([`FIRST_ADMIN_PASSWORD: ${fault}`]);
    const passwordHash = await this.passwords.hash(password);
    const now = this.clock.now();
    return this.unitOfWork.run(async () => {
      if (!(await this.isMissing())) return false;
      await this.accounts.add({
        id: randomUUID(),
        name,
        signInName: name,
        signInKey: signInKey(name),
        role: 'administrator',
        address: null,
        active: true,
        passwordHash,
        passwordDue: false,
        passwordExpiresAt: null,
        pinHash: null,
        version: 1,
        createdAt: now,
        updatedAt: now,
      });
      return true;
    });
  }
}
