import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { ALL_MIGRATIONS } from '../../migrations/all-migrations.js';
import { migrateDatabase } from '../../src/server/platform/database/migrate-database.js';
import { runOnServer } from './postgres-client.js';
import { startPostgres } from './postgres-server.js';

declare module 'vitest' {
  interface ProvidedContext {
    /** Databases with the schema of the whole service and no rows, made once a run; suites work on copies. */
    templates: { sqliteFile: string; postgresAddress: string };
  }
}

const NAME = 'template_desk';

/** Runs before the first test file. Without PostgreSQL the run fails here: half the suite is not the suite. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const server = await startPostgres();
  const folder = mkdtempSync(join(tmpdir(), 'desk-sqlite-'));
  const address = server.url(NAME);
  await runOnServer(address, `CREATE DATABASE ${NAME}`);
  const sqliteFile = join(folder, `${NAME}.sqlite`);
  await migrateDatabase({ engine: 'postgres', url: address }, ALL_MIGRATIONS);
  await migrateDatabase({ engine: 'sqlite', file: sqliteFile }, ALL_MIGRATIONS);
  project.provide('templates', { sqliteFile, postgresAddress: address });
  return async () => {
    rmSync(folder, { recursive: true, force: true });
    await server.stop();
  };
}
