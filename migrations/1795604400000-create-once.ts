import type { QueryRunner } from 'typeorm';
import { instant, text } from './kit/columns.js';
import { Migration } from './kit/migration.js';
import { createTable } from './kit/tables.js';

/** Which creates were done, so that a retry finds what the first one made. */
export class CreateOnce1795604400000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'create_once',
      [
        text('operation'),
        text('idempotency_key'),
        text('created_id'),
        text('salt'),
        text('fingerprint'),
        instant('created_at'),
      ],
      { primary: ['operation', 'idempotency_key'] },
    );
  }
}
