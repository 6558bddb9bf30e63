import type { QueryRunner } from 'typeorm';
import { choice, day, flag, id, instant, integer, reference, text } from './kit/columns.js';
import { Migration } from './kit/migration.js';
import { createTable } from './kit/tables.js';

/** People, their sessions, the devices they share, who is on and what they are certified for. */
export class CreateAccounts1795608000000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'account',
      [
        id(),
        text('name'),
        text('sign_in_name'),
        text('sign_in_key'),
        choice('role', ['staff', 'manager', 'administrator', 'counsel']),
        text('address', { nullable: true }),
        flag('active'),
        text('password_hash'),
        flag('password_due'),
        instant('password_expires_at', { nullable: true }),
        text('pin_hash', { nullable: true }),
        integer('version'),
        instant('created_at'),
        instant('updated_at'),
      ],
      { unique: [['sign_in_key']] },
    );
    await createTable(
      runner,
      'device',
      [
        id(),
        text('name'),
        text('code_hash', { nullable: true }),
        instant('code_expires_at', { nullable: true }),
        text('token_hash', { nullable: true }),
        instant('enrolled_at', { nullable: true }),
        instant('last_used_at', { nullable: true }),
        instant('revoked_at', { nullable: true }),
        reference('created_by', 'account'),
        integer('version'),
        instant('created_at'),
      ],
      { unique: [['code_hash'], ['token_hash']] },
    );
    await createTable(
      runner,
      'session',
      [
        id(),
        reference('account_id', 'account'),
        reference('device_id', 'device', { nullable: true }),
        text('token_hash'),
        instant('created_at'),
        instant('last_used_at'),
        instant('expires_at'),
        instant('ended_at', { nullable: true }),
      ],
      { unique: [['token_hash']], indexes: [{ columns: ['account_id'] }] },
    );
    await createTable(runner, 'attempt', [id(), text('subject'), instant('made_at')], {
      indexes: [{ columns: ['subject', 'made_at'] }, { columns: ['made_at'] }],
    });
    await createTable(
      runner,
      'pin_confirmation',
      [
        id(),
        reference('device_id', 'device'),
        reference('account_id', 'account'),
        instant('since'),
        instant('confirmed_at'),
      ],
      { indexes: [{ columns: ['device_id', 'account_id'] }] },
    );
    await createTable(
      runner,
      'roster_entry',
      [
        id(),
        reference('account_id', 'account'),
        text('duty'),
        day('first_day'),
        day('last_day'),
        reference('written_by', 'account'),
        integer('version'),
        instant('created_at'),
        instant('updated_at'),
        instant('withdrawn_at', { nullable: true }),
      ],
      { indexes: [{ columns: ['last_day'] }, { columns: ['account_id'] }] },
    );
    await createTable(
      runner,
      'certificate',
      [
        id(),
        reference('account_id', 'account'),
        text('title'),
        text('number', { nullable: true }),
        day('issued_on', { nullable: true }),
        day('expires_on', { nullable: true }),
        reference('written_by', 'account'),
        integer('version'),
        instant('created_at'),
        instant('updated_at'),
        instant('withdrawn_at', { nullable: true }),
      ],
      { indexes: [{ columns: ['account_id'] }] },
    );
  }
}
