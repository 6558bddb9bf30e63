import type { QueryRunner } from 'typeorm';
import { flag, id, instant, integer, json, reference, text } from './kit/columns.js';
import { Migration } from './kit/migration.js';
import { createTable } from './kit/tables.js';

const NULLABLE = { nullable: true };

/** Papers that ask for records, every version of each, and the incidents that they are found by. */
export class CreateLegalRequests1795657200000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'legal_request',
      [
        id(),
        text('number'),
        integer('version'),
        flag('is_open'),
        text('kind'),
        text('list_order'),
        json('request'),
      ],
      { unique: [['number']], indexes: [{ columns: ['is_open', 'list_order', 'id'] }] },
    );
    await createTable(
      runner,
      'legal_request_version',
      [
        id(),
        reference('request_id', 'legal_request'),
        integer('version'),
        text('what'),
        text('reason', NULLABLE),
        text('person'),
        text('account_id', NULLABLE),
        instant('at'),
        json('request'),
      ],
      { unique: [['request_id', 'version']] },
    );
    await createTable(
      runner,
      'legal_request_incident',
      [reference('request_id', 'legal_request'), reference('incident_id', 'incident')],
      { primary: ['request_id', 'incident_id'], indexes: [{ columns: ['incident_id'] }] },
    );
  }
}
