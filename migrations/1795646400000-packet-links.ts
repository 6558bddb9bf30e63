import type { QueryRunner } from 'typeorm';
import { id, instant, integer, reference, text } from './kit/columns.js';
import { Migration } from './kit/migration.js';
import { createTable } from './kit/tables.js';

const NULLABLE = { nullable: true };

/** What opens a packet for somebody without an account: hashes, tries and an end. */
export class CreatePacketLinks1795646400000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'packet_link',
      [
        id(),
        reference('incident_id', 'incident'),
        text('packet_id'),
        text('token_hash'),
        text('passcode_hash'),
        integer('tries_left'),
        instant('expires_at'),
        text('closed', NULLABLE),
        text('permit_hash', NULLABLE),
        instant('permit_until', NULLABLE),
      ],
      { unique: [['token_hash']], indexes: [{ columns: ['incident_id'] }] },
    );
  }
}
