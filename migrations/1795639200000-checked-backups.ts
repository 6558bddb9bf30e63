import type { QueryRunner } from 'typeorm';
import { id, instant, integer, text } from './kit/columns.js';
import { Migration } from './kit/migration.js';
import { createTable } from './kit/tables.js';

/** Copies of the desk, and what the check of each found. */
export class CreateCheckedBackups1795639200000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'checked_backup',
      [
        id(),
        instant('made_at'),
        text('folder'),
        integer('incidents'),
        integer('amendments'),
        integer('files'),
        integer('faults'),
      ],
      { indexes: [{ columns: ['made_at'] }] },
    );
  }
}
