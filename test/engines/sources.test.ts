import { existsSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readingSource, writingSource } from '../../src/server/platform/database/data-source.js';
import { nameTarget, readDatabaseTarget } from '../../src/server/platform/database/database-target.js';
import { openDatabase } from '../../src/server/platform/database/open-database.js';
import { describeEngine } from '../support/databases.js';

describe('DATABASE_URL', () => {
  it.each<[string | undefined, unknown]>([
    [undefined, { engine: 'sqlite', file: '/srv/desk/var/incident-desk.sqlite' }],
    ['sqlite:demo.sqlite', { engine: 'sqlite', file: '/srv/desk/demo.sqlite' }],
    ['sqlite:/data/demo.sqlite', { engine: 'sqlite', file: '/data/demo.sqlite' }],
    ['postgres://desk@db/desk', { engine: 'postgres', url: 'postgres://desk@db/desk' }],
    ['postgresql://desk@db/desk', { engine: 'postgres', url: 'postgresql://desk@db/desk' }],
    ['mysql://desk@db/desk', undefined],
    ['postgres://', undefined],
    ['sqlite:', undefined],
    ['', undefined],
  ])('%j chooses %o', (url, target) => {
    expect(readDatabaseTarget(url, '/srv/desk')).toEqual(target);
  });

  it.each([
    ['postgres://desk:p%40ss@db:5432/desk?sslmode=require', 'the PostgreSQL database "desk" at db:5432'],
    ['postgres://desk:a@b@db/desk', 'the PostgreSQL database "desk" at db'],
    ['postgres://desk:a/b@db/desk', 'the PostgreSQL database "desk" at db'],
    ['postgres:///desk', 'the PostgreSQL database "desk" at the local socket'],
  ])('%s is shown as %s, without user and password', (url, name) => {
    expect(nameTarget({ engine: 'postgres', url })).toBe(name);
  });
});

describeEngine('sqlite', 'the connections', { rows: [] }, (desk) => {
  it.each([
    ['writes', writingSource],
    ['reads', readingSource],
  ])('that %s: log before file, every commit on the disk, references held', async (_what, sourceOf) => {
    const source = await sourceOf(desk.target, {}).initialize();
    try {
      const settings = await Promise.all(
        ['journal_mode', 'synchronous', 'foreign_keys', 'busy_timeout', 'secure_delete'].map((name) =>
          source.query(`PRAGMA ${name}`),
        ),
      );
      // SQLite manual, "PRAGMA Statements": synchronous 2 is FULL.
      expect(settings).toEqual([
        [{ journal_mode: 'wal' }],
        [{ synchronous: 2 }],
        [{ foreign_keys: 1 }],
        [{ timeout: 5000 }],
        [{ secure_delete: 1 }],
      ]);
    } finally {
      await source.destroy();
    }
  });

  it('begin as writers, so that a read before the write is not overtaken by another process', async () => {
    const { target, unitOfWork } = desk;
    const other = await writingSource(target, {}).initialize();
    await other.query('PRAGMA busy_timeout = 0');
    try {
      await unitOfWork.run(async () => {
        await unitOfWork.manager.query('SELECT 1');
        await expect(other.query('CREATE TABLE elsewhere (id integer)')).rejects.toMatchObject({
          code: 'DATABASE.BUSY',
        });
      });
    } finally {
      await other.destroy();
    }
  });
});

describeEngine('postgres', 'the connections', { rows: [] }, (desk) => {
  it.each([
    ['writes', writingSource, 'serializable', 'off'],
    ['reads', readingSource, 'read committed', 'on'],
  ])('that %s: %#', async (_what, sourceOf, isolation, readOnly) => {
    const source = await sourceOf(desk.target, {}).initialize();
    try {
      expect(await source.query('SHOW transaction_isolation')).toEqual([
        { transaction_isolation: isolation },
      ]);
      expect(await source.query('SHOW transaction_read_only')).toEqual([{ transaction_read_only: readOnly }]);
    } finally {
      await source.destroy();
    }
  });
});

describe('a new SQLite file', () => {
  const folder = mkdtempSync(join(tmpdir(), 'desk-new-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('comes into a folder that nobody else of the machine may enter', async () => {
    const file = join(folder, 'var', 'desk.sqlite');
    const database = await openDatabase({ engine: 'sqlite', file }, [], { report: () => undefined });
    await database.close();
    expect(existsSync(file)).toBe(true);
    expect(statSync(join(folder, 'var')).mode & 0o777).toBe(0o700);
  });
});
