import type { DataSource } from 'typeorm';
import { afterAll, beforeAll, describe } from 'vitest';
import { type MappedClass, writingSource } from '../../src/server/platform/database/data-source.js';
import type { DatabaseTarget, Engine } from '../../src/server/platform/database/database-target.js';
import { migrateDatabase } from '../../src/server/platform/database/migrate-database.js';
import { openDatabase, type OpenDatabase } from '../../src/server/platform/database/open-database.js';
import type { UnitOfWork } from '../../src/server/platform/database/unit-of-work.js';
import { ALL_MIGRATIONS } from '../../migrations/all-migrations.js';
import { cloneTemplate, type DatabaseClone } from './database-clone.js';

export const ENGINES: readonly Engine[] = ['sqlite', 'postgres'];

export interface DeskParts {
  rows: readonly MappedClass[];
  /** Steps of the suite's own, after those of the service. */
  migrations?: readonly MappedClass[];
  waitLimitMs?: number;
}

/** A database of a suite's own. */
export interface Desk {
  readonly engine: Engine;
  readonly target: DatabaseTarget;
  readonly unitOfWork: UnitOfWork;
  /** What effects after a commit threw. */
  readonly reported: readonly unknown[];
  /** Plain SQL past the service and its unit of work, as someone with the password could; $1 and so on in order. */
  plainSql(sql: string, parameters?: unknown[]): Promise<Record<string, unknown>[]>;
}

/** The same suite on both engines, each with an empty database of the whole schema. */
export function describeEngines(name: string, parts: DeskParts, suite: (desk: Desk) => void): void {
  for (const engine of ENGINES) describeEngine(engine, name, parts, suite);
}

/** A suite that makes sense on one engine only; say why where you use it. */
export function describeEngine(
  engine: Engine,
  name: string,
  parts: DeskParts,
  suite: (desk: Desk) => void,
): void {
  describe(`${name} (${engine})`, () => {
    let clone: DatabaseClone;
    let database: OpenDatabase;
    let aside: DataSource;
    const reported: unknown[] = [];

    beforeAll(async () => {
      clone = await cloneTemplate(engine);
      const { target } = clone;
      const { migrations = [], rows, waitLimitMs } = parts;
      if (migrations.length > 0) await migrateDatabase(target, [...ALL_MIGRATIONS, ...migrations]);
      const report = (error: unknown): unknown => reported.push(error);
      database = await openDatabase(
        target,
        rows,
        waitLimitMs === undefined ? { report } : { report, waitLimitMs },
      );
      aside = await writingSource(target, {}).initialize();
    });

    afterAll(async () => {
      await aside?.destroy();
      await database?.close();
      await clone?.drop();
    });

    suite({
      engine,
      get target() {
        return clone.target;
      },
      get unitOfWork() {
        return database.unitOfWork;
      },
      reported,
      plainSql: (sql, parameters) => aside.query(sql, parameters),
    });
  });
}
