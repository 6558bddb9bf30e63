import { type DynamicModule, Logger, Module, type OnApplicationShutdown } from '@nestjs/common';
import { Clock } from '../clock.js';
import { CreateOnce } from './create-once.js';
import { CreateOnceRow } from './create-once.row.js';
import type { MappedClass } from './data-source.js';
import type { DatabaseTarget } from './database-target.js';
import { MailDecisionRow, MailRow } from './mail.row.js';
import { migrateDatabase } from './migrate-database.js';
import { openDatabase, type OpenDatabase } from './open-database.js';
import { UnitOfWork } from './unit-of-work.js';

export interface DatabaseParts {
  target: DatabaseTarget;
  /** Every row class of every module. */
  rows: readonly MappedClass[];
  migrations: readonly MappedClass[];
}

/** Lets go of the database when the last request has been answered. */
class DatabaseKeeper implements OnApplicationShutdown {
  constructor(private readonly database: OpenDatabase) {}

  async onApplicationShutdown(): Promise<void> {
    await this.database.close();
  }
}

/** The rows that belong to no module. */
export const PLATFORM_ROWS: readonly MappedClass[] = [CreateOnceRow, MailRow, MailDecisionRow];

const DATABASE = Symbol('the open database');

/**
 * Migrates and opens the database while the service is put together: whoever is handed the unit of work finds the
 * schema ready, and nothing listens before.
 */
@Module({})
export class DatabaseModule {
  /** @throws DatabaseUnavailableError while the application is created */
  static with({ target, rows, migrations }: DatabaseParts): DynamicModule {
    const logger = new Logger('Database');
    const report = (error: unknown): void => logger.error(error instanceof Error ? error.stack : error);
    return {
      module: DatabaseModule,
      global: true,
      providers: [
        {
          provide: DATABASE,
          useFactory: async () => {
            await migrateDatabase(target, migrations);
            return openDatabase(target, [...PLATFORM_ROWS, ...rows], { report });
          },
        },
        {
          provide: UnitOfWork,
          inject: [DATABASE],
          useFactory: (database: OpenDatabase) => database.unitOfWork,
        },
        Clock,
        {
          provide: CreateOnce,
          inject: [UnitOfWork, Clock],
          useFactory: (unitOfWork: UnitOfWork, clock: Clock) => new CreateOnce(unitOfWork, clock),
        },
        {
          provide: DatabaseKeeper,
          inject: [DATABASE],
          useFactory: (database: OpenDatabase) => new DatabaseKeeper(database),
        },
      ],
      exports: [UnitOfWork, CreateOnce, Clock],
    };
  }
}
