import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { Entity, getMetadataArgsStorage } from 'typeorm';
import { describe, expect, it } from 'vitest';
import { ChoiceColumn, IdColumn } from '../../src/server/platform/database/columns.js';
import type { MappedClass } from '../../src/server/platform/database/data-source.js';
import { describeEngine, describeEngines } from '../support/databases.js';
import { schemaDrift } from '../support/schema-drift.js';
import { NOTES } from './notes.js';

const TABLES = getMetadataArgsStorage().tables;
const isRow = (exported: unknown): exported is MappedClass =>
  TABLES.some(({ target }) => target === exported);

const SERVER = join(import.meta.dirname, '..', '..', 'src', 'server');

/** Every row of every module, found by its file name: a new one is under this test without being listed. */
const ROWS: MappedClass[] = [];
for (const file of readdirSync(SERVER, { recursive: true, encoding: 'utf8' })) {
  if (!file.endsWith('.row.ts')) continue;
  ROWS.push(...Object.values((await import(join(SERVER, file))) as object).filter(isRow));
}

/** Tables that no row class maps: TypeORM's own list of steps, and what full-text search keeps beside its documents. */
const WITHOUT_ROW = /^(migrations|sqlite_\w+|\w+_search(_fts\w*)?)$/;

describe('the rows of the service', () => {
  it('are found', () => {
    expect(ROWS.map(({ name }) => name)).toContain('CreateOnceRow');
  });
});

describeEngines('the schema of the service', { rows: [] }, (desk) => {
  it('is what the rows declare', async () => {
    expect(await schemaDrift(desk.target, ROWS)).toEqual([]);
  });

  it('has no table that no row declares', async () => {
    const tables = await desk.plainSql(
      desk.engine === 'sqlite'
        ? `SELECT name FROM sqlite_master WHERE type = 'table'`
        : `SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public'`,
    );
    const declared = TABLES.filter(({ target }) => ROWS.some((row) => row === target)).map(
      ({ name }) => name,
    );
    const known = (name: string): boolean => declared.includes(name) || WITHOUT_ROW.test(name);
    expect(tables.map(({ name }) => String(name)).filter((name) => !known(name))).toEqual([]);
  });
});

describeEngines('a schema with every kind of column and rule', NOTES, (desk) => {
  it('is what the rows declare', async () => {
    expect(await schemaDrift(desk.target, NOTES.rows)).toEqual([]);
  });

  it('is found to differ after any change behind it', async () => {
    await desk.plainSql('ALTER TABLE note ADD COLUMN surprise text');
    expect(await schemaDrift(desk.target, NOTES.rows)).not.toEqual([]);
  });
});

@Entity('note')
class StricterNoteRow {
  @IdColumn() id: string;
  @ChoiceColumn(['plain']) kind: string;
}

// PostgreSQL writes the words of a check anew, so that they cannot be compared.
describeEngine('sqlite', 'a row that allows other words than its table', NOTES, (desk) => {
  it('is found to differ', async () => {
    expect(await schemaDrift(desk.target, [StricterNoteRow])).toContainEqual(
      expect.stringMatching(/^CHECK ck_note_kind becomes "kind" IN \('plain'\), was /),
    );
  });
});
