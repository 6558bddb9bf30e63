import type { QueryRunner } from 'typeorm';
import { id, instant, json, number, reference } from './kit/columns.js';
import { Migration } from './kit/migration.js';
import { createTable } from './kit/tables.js';

/** Files that are arriving; what has arrived stands in the record. */
export class CreateEvidence1795629600000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'evidence_upload',
      [
        id(),
        reference('incident_id', 'incident'),
        number('size'),
        json('announced', { nullable: true }),
        instant('started_at'),
        instant('finished_at', { nullable: true }),
      ],
      { indexes: [{ columns: ['incident_id', 'finished_at'] }] },
    );
  }
}
