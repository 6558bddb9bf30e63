import { type MappedClass, writingSource } from '../../src/server/platform/database/data-source.js';
import type { DatabaseTarget } from '../../src/server/platform/database/database-target.js';

/** The statements that would make the database what the rows declare: none when the two agree. */
export async function schemaDrift(target: DatabaseTarget, rows: readonly MappedClass[]): Promise<string[]> {
  const source = await writingSource(target, { rows }).initialize();
  try {
    const { upQueries } = await source.driver.createSchemaBuilder().log();
    return upQueries.map(({ query }) => query);
  } finally {
    await source.destroy();
  }
}
