import type { QueryRunner } from 'typeorm';
import { id, instant, reference, text } from './kit/columns.js';
import { Migration } from './kit/migration.js';
import { createTable } from './kit/tables.js';

/** Secret addresses at which calendar programs read a person's tasks. */
export class CreateCalendarFeeds1795636800000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'calendar_feed',
      [
        id(),
        reference('account_id', 'account'),
        text('secret_hash'),
        instant('created_at'),
        instant('revoked_at', { nullable: true }),
      ],
      { unique: [['secret_hash']], indexes: [{ columns: ['account_id'] }] },
    );
  }
}
