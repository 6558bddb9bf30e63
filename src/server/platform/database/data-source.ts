import { DataSource, type DataSourceOptions, type QueryRunner } from 'typeorm';
import { mapDriverError } from './database-errors.js';
import type { DatabaseTarget } from './database-target.js';
import { SnakeCaseNames } from './snake-case-names.js';
import { OPEN_READER, OPEN_WRITER, sqliteDriver } from './sqlite-driver.js';

/** A class that TypeORM maps: of a row (`*.row.ts`) or of a migration. */
export type MappedClass = new () => object;

/** How many units of work run side by side on PostgreSQL. SQLite has one writer, whatever is asked. */
export const WRITERS_ON_POSTGRES = 10;

/** How long SQLite waits for another process, such as a restore or a check of the record, to finish writing. */
const OTHER_PROCESS_MS = 5_000;
const CONNECT_MS = 5_000;

/**
 * A source whose statements fail with a DatabaseError and nothing else. Each of its runners is a new one: TypeORM
 * shares one runner between all callers of SQLite, which mixes the transactions of strangers
 * (https://github.com/typeorm/typeorm/issues/1884).
 */
class DeskDataSource extends DataSource {
  override createQueryRunner(): QueryRunner {
    Object.assign(this.driver, { queryRunner: undefined });
    const runner = super.createQueryRunner();
    const query = runner.query.bind(runner) as Query;
    const mapped: Query = async (...statement) => {
      try {
        return await query(...statement);
      } catch (error) {
        throw mapDriverError(error, (table, columns) => this.uniqueNamed(table, columns));
      }
    };
    return Object.assign(runner, { query: mapped });
  }

  private uniqueNamed(table: string, columns: readonly string[]): string | undefined {
    const row = this.entityMetadatas.find(({ tableName }) => tableName === table);
    if (row === undefined) return undefined;
    const same = (others: readonly { databaseName: string }[]): boolean =>
      others.map(({ databaseName }) => databaseName).join() === columns.join();
    if (same(row.primaryColumns)) return this.namingStrategy.primaryKeyName(table, [...columns]);
    return (
      row.uniques.find((unique) => same(unique.columns))?.name ??
      row.indices.find((index) => index.isUnique && same(index.columns))?.name
    );
  }
}

type Query = (sql: string, parameters?: unknown[], structured?: boolean) => Promise<unknown>;

interface Parts {
  rows?: readonly MappedClass[];
  migrations?: readonly MappedClass[];
}

const common = ({ rows = [], migrations = [] }: Parts) =>
  ({
    entities: [...rows],
    migrations: [...migrations],
    namingStrategy: new SnakeCaseNames(),
    logging: false,
    synchronize: false,
    invalidWhereValuesBehavior: { null: 'throw', undefined: 'throw' },
  }) satisfies Partial<DataSourceOptions>;

/**
 * The source that writes, not yet open. Its transactions are serializable on both engines: SQLite's are by nature, and
 * on PostgreSQL a unit of work that read what another has changed meanwhile is refused and run again.
 */
export function writingSource(target: DatabaseTarget, parts: Parts): DataSource {
  if (target.engine === 'sqlite') {
    return new DeskDataSource({
      ...common(parts),
      type: 'sqlite',
      database: target.file,
      driver: sqliteDriver,
      flags: OPEN_WRITER,
      enableWAL: true,
      busyTimeout: OTHER_PROCESS_MS,
    });
  }
  return postgresSource(target.url, parts, '-c default_transaction_isolation=serializable');
}

/** The source that reads what has been committed, not yet open; a write through it is refused. */
export function readingSource(target: DatabaseTarget, parts: Parts): DataSource {
  if (target.engine === 'sqlite') {
    return new DeskDataSource({
      ...common(parts),
      type: 'sqlite',
      database: target.file,
      driver: sqliteDriver,
      flags: OPEN_READER,
      busyTimeout: OTHER_PROCESS_MS,
    });
  }
  return postgresSource(target.url, parts, '-c default_transaction_read_only=on');
}

function postgresSource(url: string, parts: Parts, settings: string): DataSource {
  return new DeskDataSource({
    ...common(parts),
    type: 'postgres',
    url,
    applicationName: 'incident-desk',
    installExtensions: false,
    connectTimeoutMS: CONNECT_MS,
    poolSize: WRITERS_ON_POSTGRES,
    // An idle connection that breaks is replaced by the pool; whoever needs it next is told.
    poolErrorHandler: () => undefined,
    extra: { options: settings },
  });
}
