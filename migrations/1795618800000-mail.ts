import type { QueryRunner } from 'typeorm';
import { choice, id, instant, integer, reference, text } from './kit/columns.js';
import { Migration } from './kit/migration.js';
import { createTable } from './kit/tables.js';

const NULLABLE = { nullable: true };
const STATES = ['queued', 'sending', 'sent', 'failed', 'uncertain', 'delivered'];

/** Mail on its way, and what people decided about mail that did not go through. */
export class CreateMail1795618800000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'mail',
      [
        id(),
        text('cause_key'),
        text('message_id'),
        text('purpose'),
        text('incident_id', NULLABLE),
        text('to_address'),
        text('subject'),
        text('body'),
        choice('state', STATES),
        integer('version'),
        integer('tries'),
        instant('next_try_at'),
        choice('carrier', ['smtp', 'folder'], NULLABLE),
        instant('claimed_until', NULLABLE),
        text('words', NULLABLE),
        instant('queued_at'),
        instant('changed_at'),
      ],
      {
        unique: [['cause_key']],
        indexes: [
          { columns: ['state', 'next_try_at'] },
          { columns: ['to_address', 'state'] },
          { columns: ['incident_id'] },
        ],
      },
    );
    await createTable(
      runner,
      'mail_decision',
      [
        id(),
        reference('mail_id', 'mail'),
        choice('decision', ['resend', 'delivered']),
        text('reason'),
        choice('state_before', STATES),
        text('words_before', NULLABLE),
        text('person'),
        text('account_id'),
        instant('decided_at'),
      ],
      { indexes: [{ columns: ['mail_id'] }] },
    );
  }
}
