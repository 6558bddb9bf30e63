import type { QueryRunner } from 'typeorm';
import { flag, id, instant, reference, text } from './kit/columns.js';
import { Migration } from './kit/migration.js';
import { createTable } from './kit/tables.js';

/** How each report of an incident stands, for lists; what was signed and filed is in the record. */
export class CreateDutyStates1795622400000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'duty_state',
      [
        id(),
        reference('incident_id', 'incident'),
        text('duty'),
        text('vessel'),
        text('outcome'),
        flag('immediate'),
        instant('due_at', { nullable: true }),
        instant('overdue_after', { nullable: true }),
        text('decision', { nullable: true }),
        instant('wait_until', { nullable: true }),
        flag('filed'),
        flag('supplement_due'),
        flag('settled'),
        text('due_order'),
        instant('changed_at'),
        instant('clock_since'),
      ],
      {
        unique: [['incident_id', 'duty', 'vessel']],
        indexes: [{ columns: ['settled', 'due_order', 'id'] }],
      },
    );
  }
}
