import type { DataSource } from 'typeorm';
import { type MappedClass, writingSource } from '../../src/server/platform/database/data-source.js';
import type { DatabaseTarget } from '../../src/server/platform/database/database-target.js';

/** What would make the database what the rows declare: nothing when the two agree. */
export async function schemaDrift(target: DatabaseTarget, rows: readonly MappedClass[]): Promise<string[]> {
  const source = await writingSource(target, { rows }).initialize();
  try {
    const { upQueries } = await source.driver.createSchemaBuilder().log();
    const checks = target.engine === 'sqlite' ? await changedChecks(source) : [];
    return [...upQueries.map(({ query }) => query), ...checks];
  } finally {
    await source.destroy();
  }
}

/** TypeORM compares checks by name alone. SQLite keeps their words, PostgreSQL rewrites them; one of them suffices. */
async function changedChecks(source: DataSource): Promise<string[]> {
  const tables = await source
    .createQueryRunner()
    .getTables(source.entityMetadatas.map(({ tablePath }) => tablePath));
  const kept = new Map(
    tables.flatMap(({ checks }) => checks.map(({ name, expression }) => [name, expression])),
  );
  return source.entityMetadatas
    .flatMap(({ checks }) => checks)
    .filter(({ name, expression }) => kept.has(name) && kept.get(name) !== `(${expression})`)
    .map(({ name, expression }) => `CHECK ${name} becomes ${expression}, was ${kept.get(name)}`);
}
