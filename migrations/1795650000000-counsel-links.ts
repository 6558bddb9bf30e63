import type { QueryRunner } from 'typeorm';
import { text } from './kit/columns.js';
import { Migration } from './kit/migration.js';
import { addColumn } from './kit/tables.js';

/** Links that open for counsel alone, signed in, and not by a passcode. */
export class AddCounselLinks1795650000000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await addColumn(runner, 'packet_link', text('counsel_account', { nullable: true }));
  }
}
