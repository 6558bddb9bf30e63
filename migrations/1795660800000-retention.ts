import type { QueryRunner } from 'typeorm';
import { day, id, instant, integer, json, reference, text } from './kit/columns.js';
import { Migration } from './kit/migration.js';
import { createTable } from './kit/tables.js';

const NULLABLE = { nullable: true };

/** What was decided about what had been kept long enough, and periods that the business lengthened. */
export class CreateRetention1795660800000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'retention_decision',
      [
        id(),
        text('kind'),
        reference('incident_id', 'incident', NULLABLE),
        text('month', NULLABLE),
        text('decision'),
        text('reason'),
        day('keep_until', NULLABLE),
        text('counsel', NULLABLE),
        day('directed_on', NULLABLE),
        json('gone'),
        text('person'),
        text('role'),
        text('account_id'),
        instant('at'),
      ],
      { indexes: [{ columns: ['kind', 'incident_id'] }, { columns: ['at', 'id'] }] },
    );
    await createTable(
      runner,
      'retention_choice',
      [
        id(),
        text('period'),
        integer('months'),
        text('reason'),
        text('person'),
        text('role'),
        text('account_id'),
        instant('at'),
        integer('version'),
      ],
      { indexes: [{ columns: ['period'] }] },
    );
  }
}
