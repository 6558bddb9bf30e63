import { randomUUID } from 'node:crypto';
import { NestFactory } from '@nestjs/core';
import { ALL_MIGRATIONS } from '../../../migrations/all-migrations.js';
import { AccountCreationDto } from '../../../shared/wire/accounts-account.dto.js';
import { readMembers } from '../../../shared/wire/accounts-read.js';
import { ConfigError } from '../platform/config.js';
import { DatabaseModule } from '../platform/database/database.module.js';
import { readDatabaseTarget } from '../platform/database/database-target.js';
import { readInput } from '../platform/http/read-input.js';
import { projectRoot } from '../platform/project-root.js';
import { AccountsModule } from './accounts.module.js';
import { AccountsService, type NewAccount } from './accounts.service.js';
import { ACCOUNT_ROWS } from './database/account-rows.js';
import { AccountsRepository } from './database/accounts.repository.js';
import { refuse } from '../platform/http/refuse.js';
import { signInKey } from './sign-in-key.js';

/** Accounts for whoever may use the machine that the service runs on: the first one, and a way back in. */
export interface AccountDesk {
  /** @throws ProblemException naming every fault of the draft */
  create(draft: unknown): Promise<NewAccount>;
  /** @throws ProblemException where nobody has that sign-in name */
  resetPassword(signInName: string): Promise<NewAccount>;
  close(): Promise<void>;
}

/**
 * Opens the database that DATABASE_URL names, beside a service that may be running.
 * @throws ConfigError or DatabaseUnavailableError when that cannot be done
 */
export async function openAccountDesk(environment: Record<string, string | undefined>): Promise<AccountDesk> {
  const target = readDatabaseTarget(environment['DATABASE_URL'], projectRoot());
  if (target === undefined) throw new ConfigError(['DATABASE_URL cannot be read: see README.md.']);
  const context = await NestFactory.createApplicationContext(
    {
      module: class AccountDeskModule {},
      imports: [
        DatabaseModule.with({ target, rows: ACCOUNT_ROWS, migrations: ALL_MIGRATIONS }),
        AccountsModule,
      ],
    },
    { logger: ['error'], abortOnError: false },
  );
  const service = context.get(AccountsService);
  return {
    create: (draft) => service.create(readInput(readMembers(AccountCreationDto, draft)), randomUUID()),
    resetPassword: async (signInName) => {
      const account = await context.get(AccountsRepository).findSecrets({ signInKey: signInKey(signInName) });
      return service.resetPassword(account?.id ?? refuse(404, 'Nobody has that sign-in name.'));
    },
    close: () => context.close(),
  };
}
