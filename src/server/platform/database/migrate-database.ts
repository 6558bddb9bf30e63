import { type DataSource, MigrationExecutor, type QueryRunner } from 'typeorm';
import { type MappedClass, writingSource } from './data-source.js';
import type { DatabaseTarget } from './database-target.js';
import { DatabaseUnavailableError, reaching } from './open-database.js';

/** Any number that no other program on the same PostgreSQL server is likely to lock. */
const MIGRATION_LOCK = 733_174_219;

/**
 * Brings the database up to the last of the migrations, each in a transaction of its own, on a source that is closed
 * again: one that failed half-way leaves foreign keys off on its connection.
 * @throws DatabaseUnavailableError when it cannot be reached, was made by a later version, or would end inconsistent
 */
export async function migrateDatabase(
  target: DatabaseTarget,
  migrations: readonly MappedClass[],
): Promise<void> {
  const source = writingSource(target, { migrations });
  await reaching(target, async () => {
    await source.initialize();
    try {
      await alone(source, async () => {
        await refuseLaterVersion(source);
        await source.runMigrations({ transaction: 'each' });
        await refuseBrokenReferences(source);
      });
    } finally {
      await source.destroy();
    }
  });
}

/** Two instances that start together against one PostgreSQL migrate one after the other. */
async function alone(source: DataSource, work: () => Promise<void>): Promise<void> {
  if (source.options.type !== 'postgres') return work();
  const runner: QueryRunner = source.createQueryRunner();
  try {
    await runner.query('SELECT pg_advisory_lock($1)', [MIGRATION_LOCK]);
    await work();
    await runner.query('SELECT pg_advisory_unlock($1)', [MIGRATION_LOCK]);
  } finally {
    await runner.release();
  }
}

/** A program that does not know a table would neither fill it nor check it. */
async function refuseLaterVersion(source: DataSource): Promise<void> {
  const known = new Set(source.migrations.map(({ name, constructor }) => name ?? constructor.name));
  const unknown = (await new MigrationExecutor(source).getExecutedMigrations()).find(
    ({ name }) => !known.has(name),
  );
  if (unknown) {
    throw new DatabaseUnavailableError(
      `A later version of this program has changed the database (${unknown.name}): start that version.`,
    );
  }
}

async function refuseBrokenReferences(source: DataSource): Promise<void> {
  if (source.options.type === 'postgres') return;
  const broken: { table: string; parent: string }[] = await source.query('PRAGMA foreign_key_check');
  if (broken.length > 0) {
    const pairs = new Set(broken.map(({ table, parent }) => `${table} to ${parent}`));
    throw new DatabaseUnavailableError(
      `The database refers to rows that are not there: ${[...pairs].join(', ')}. Restore a copy from before.`,
    );
  }
}
