import type { QueryRunner } from 'typeorm';
import { reference, text } from './kit/columns.js';
import { Migration } from './kit/migration.js';
import { addColumn, createTable } from './kit/tables.js';

/** Which counsel reads which incident, and the salts by which the log commits to notes for counsel. */
export class AddHolds1795633200000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'counsel_assignment',
      [reference('incident_id', 'incident'), text('account_id')],
      { primary: ['incident_id', 'account_id'], indexes: [{ columns: ['account_id'] }] },
    );
    await addColumn(runner, 'counsel_request', text('salt', { nullable: true }));
    await addColumn(runner, 'privileged_entry', text('salt', { nullable: true }));
  }
}
