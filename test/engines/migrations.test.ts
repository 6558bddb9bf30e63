import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type QueryRunner, TableColumn } from 'typeorm';
import { describe, expect, it, vi } from 'vitest';
import { ALL_MIGRATIONS } from '../../migrations/all-migrations.js';
import { choice, id, integer, reference, text } from '../../migrations/kit/columns.js';
import { Migration } from '../../migrations/kit/migration.js';
import { addColumn, createTable } from '../../migrations/kit/tables.js';
import { type MappedClass, writingSource } from '../../src/server/platform/database/data-source.js';
import { migrateDatabase } from '../../src/server/platform/database/migrate-database.js';
import { describeEngine, describeEngines } from '../support/databases.js';
import { CreateNotes4102444800000 } from './notes.js';

class CreatePair4102444800001 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(runner, 'parent', [id()]);
    await createTable(runner, 'child', [id(), reference('parent_id', 'parent')]);
    await runner.query(`INSERT INTO parent (id) VALUES ('p')`);
    await runner.query(`INSERT INTO child (id, parent_id) VALUES ('c', 'p')`);
  }
}

class AddToParent4102444800002 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await addColumn(runner, 'parent', choice('mood', ['calm', 'rough'], { nullable: true }));
    await addColumn(runner, 'parent', text('remark', { nullable: true }));
  }
}

class FailHalfWay4102444800003 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(runner, 'half', [id()]);
    throw new Error('half-way');
  }
}

class BreakReference4102444800004 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`INSERT INTO child (id, parent_id) VALUES ('orphan', 'nobody')`);
  }
}

class Rebuild4102444800005 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await runner.addColumn('parent', new TableColumn({ name: 'more', type: 'integer', isNullable: true }));
  }
}

class Outside4102444800006 extends Migration {
  constructor() {
    super();
    Object.assign(this, { transaction: false });
  }
  up(): Promise<void> {
    return Promise.resolve();
  }
}

const PAIR = [...ALL_MIGRATIONS, CreatePair4102444800001];

describeEngines('migrating', { rows: [], migrations: [CreatePair4102444800001] }, (desk) => {
  const applied = async (): Promise<unknown[]> => {
    const rows = await desk.plainSql('SELECT name FROM migrations ORDER BY id');
    return rows.map(({ name }) => name);
  };
  const names = (steps: readonly MappedClass[]): string[] => steps.map(({ name }) => name);

  it('takes every step of the list in its order, and none a second time', async () => {
    expect(await applied()).toEqual(names(PAIR));
    await migrateDatabase(desk.target, PAIR);
    expect(await applied()).toEqual(names(PAIR));
  });

  it('adds columns to a table that others refer to, and loses no row of either', async () => {
    await migrateDatabase(desk.target, [...PAIR, AddToParent4102444800002]);
    expect(await desk.plainSql('SELECT * FROM parent')).toEqual([{ id: 'p', mood: null, remark: null }]);
    expect(await desk.plainSql('SELECT * FROM child')).toEqual([{ id: 'c', parent_id: 'p' }]);
    const wild = desk.plainSql('UPDATE parent SET mood = $1', ['wild']);
    await expect(wild).rejects.toMatchObject({ code: 'DATABASE.CHECK', constraint: 'ck_parent_mood' });
  });

  it('leaves nothing of a step that fails, stops the start, and goes on once it is repaired', async () => {
    const before = [...PAIR, AddToParent4102444800002];
    const failing = migrateDatabase(desk.target, [...before, FailHalfWay4102444800003]);
    await expect(failing).rejects.toThrow(/Cannot use the .*half-way/s);
    expect(await applied()).toEqual(names(before));
    await expect(desk.plainSql('SELECT * FROM half')).rejects.toThrow();
  });

  it('stops at a database that a later version has changed', async () => {
    await expect(migrateDatabase(desk.target, ALL_MIGRATIONS)).rejects.toThrow(
      /later version .*4102444800002.*: start that version/,
    );
  });
});

// SQLite checks no reference while it migrates; PostgreSQL always does.
describeEngine(
  'sqlite',
  'a reference that a step breaks',
  { rows: [], migrations: [CreatePair4102444800001] },
  (desk) => {
    it('stops the start', async () => {
      const breaking = migrateDatabase(desk.target, [...PAIR, BreakReference4102444800004]);
      await expect(breaking).rejects.toThrow('child to parent');
    });
  },
);

// Two instances may serve one PostgreSQL; a SQLite file has one.
describeEngine('postgres', 'two instances that start together', { rows: [] }, (desk) => {
  it('take each step once', async () => {
    const start = () => migrateDatabase(desk.target, [...ALL_MIGRATIONS, CreateNotes4102444800000]);
    await Promise.all([start(), start(), start()]);
    const rows = await desk.plainSql('SELECT name FROM migrations');
    expect(rows).toHaveLength(ALL_MIGRATIONS.length + 1);
  });
});

/** A table that is built anew loses its triggers, and by cascade what refers to it. */
const REBUILD = /"temporary_|\bDROP TABLE\b|\bRENAME TO\b/i;

/** What a step must not do, found by taking all of them on an empty SQLite file with every statement written down. */
async function faultsOf(steps: readonly MappedClass[]): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), 'desk-steps-'));
  const target = { engine: 'sqlite', file: join(folder, 'steps.sqlite') } as const;
  const source = await writingSource(target, { migrations: steps }).initialize();
  const log = vi.spyOn(source.logger, 'logQuery');
  try {
    await source.runMigrations({ transaction: 'each' });
    const outside = source.migrations.filter((step) => step.transaction !== undefined);
    return [
      ...outside.map((step) => `${step.constructor.name} leaves its transaction`),
      ...log.mock.calls.flatMap(([statement]) => (REBUILD.test(statement) ? [statement] : [])),
    ];
  } finally {
    await source.destroy();
    rmSync(folder, { recursive: true, force: true });
  }
}

describe('the steps of the schema', () => {
  it('stay in their transactions and build no table anew', async () => {
    expect(await faultsOf(ALL_MIGRATIONS)).toEqual([]);
  });

  it('are caught when they do', async () => {
    expect(await faultsOf([CreatePair4102444800001, Rebuild4102444800005])).toContainEqual(
      expect.stringContaining('temporary_parent'),
    );
    expect(await faultsOf([Outside4102444800006])).toEqual(['Outside4102444800006 leaves its transaction']);
  });

  it('stand in the order of their times, each its own', () => {
    const times = ALL_MIGRATIONS.map(({ name }) => Number(/\d{13}$/.exec(name)?.[0]));
    expect(times).toEqual([...new Set(times)].sort((one, other) => one - other));
    expect(times).not.toContain(Number.NaN);
  });

  it.each<[string, (runner: QueryRunner) => Promise<void>, RegExp]>([
    [
      'a column that rows of before would lack',
      (runner) => addColumn(runner, 'parent', integer('n')),
      /nullable/,
    ],
    [
      'a reference added later',
      (runner) => addColumn(runner, 'parent', reference('p', 'parent', { nullable: true })),
      /table of its own/,
    ],
    [
      'a name that PostgreSQL would cut',
      (runner) => createTable(runner, 'a'.repeat(60), [id()], { unique: [['id']] }),
      /longer than 63/,
    ],
  ])('refuse %s', async (_what, step, words) => {
    await expect(step({} as QueryRunner)).rejects.toThrow(words);
  });

  it('go forward only', async () => {
    await expect(new CreatePair4102444800001().down()).rejects.toThrow('restore a copy');
  });
});
