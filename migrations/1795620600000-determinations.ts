import type { QueryRunner } from 'typeorm';
import { id, instant, integer, json, reference, text } from './kit/columns.js';
import { Migration } from './kit/migration.js';
import { createTable } from './kit/tables.js';

/** Determinations as they were made, each superseding the one before, and the law that all of them were held against. */
export class CreateDeterminations1795620600000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'determination',
      [
        id(),
        reference('incident_id', 'incident'),
        integer('sequence'),
        instant('made_at'),
        integer('amendment'),
        json('facts'),
        json('packs'),
        json('determination'),
      ],
      { unique: [['incident_id', 'sequence']] },
    );
    await createTable(runner, 'law_applied', [id(), text('digest'), instant('applied_at')]);
  }
}
