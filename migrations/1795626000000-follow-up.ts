import type { QueryRunner } from 'typeorm';
import {
  choice,
  type Column,
  day,
  flag,
  id,
  instant,
  integer,
  json,
  reference,
  text,
} from './kit/columns.js';
import { Migration } from './kit/migration.js';
import { createTable } from './kit/tables.js';

const NULLABLE = { nullable: true };
const maybe = (...names: string[]): Column[] => names.map((name) => text(name, NULLABLE));

/** The work after incidents with all that happened to it, claims, hand-overs of shifts, house rules, and where people are told. */
export class CreateFollowUp1795626000000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'task',
      [
        id(),
        reference('incident_id', 'incident'),
        text('task_key'),
        integer('round'),
        text('template', NULLABLE),
        integer('task_order'),
        text('title'),
        text('why'),
        text('source'),
        choice('owner', ['shift-lead', 'manager']),
        reference('assignee_id', 'account', NULLABLE),
        choice('state', ['open', 'done', 'superseded']),
        instant('due_at', NULLABLE),
        text('due_order'),
        text('due_why'),
        text('evidence_asked'),
        flag('escalates'),
        json('rests_on'),
        text('duty', NULLABLE),
        instant('acknowledged_at', NULLABLE),
        text('acknowledged_by', NULLABLE),
        integer('version'),
        instant('created_at'),
        instant('updated_at'),
      ],
      {
        unique: [['incident_id', 'task_key', 'round']],
        indexes: [{ columns: ['state', 'due_order', 'id'] }, { columns: ['assignee_id', 'state'] }],
      },
    );
    await createTable(
      runner,
      'task_event',
      [
        id(),
        reference('task_id', 'task'),
        integer('sequence'),
        text('kind'),
        instant('at'),
        ...maybe('words'),
        json('evidence_ids', NULLABLE),
        instant('due_before', NULLABLE),
        instant('due_after', NULLABLE),
        text('about_account_id', NULLABLE),
        text('person'),
        ...maybe('account_id', 'device'),
      ],
      { unique: [['task_id', 'sequence']] },
    );
    await createTable(
      runner,
      'claim_start',
      [id(), reference('incident_id', 'incident'), instant('received_at'), instant('recorded_at')],
      { indexes: [{ columns: ['incident_id'] }] },
    );
    await this.createHouse(runner);
  }

  private async createHouse(runner: QueryRunner): Promise<void> {
    await createTable(runner, 'shift_hand_over', [
      id(),
      json('summary'),
      text('remarks', NULLABLE),
      text('built_by'),
      ...maybe('outgoing_id', 'outgoing_name'),
      instant('outgoing_at', NULLABLE),
      ...maybe('incoming_id', 'incoming_name'),
      instant('incoming_at', NULLABLE),
      integer('version'),
      instant('created_at'),
      instant('updated_at'),
    ]);
    await createTable(runner, 'adopted_house_rules', [
      id(),
      day('adopted_on'),
      text('document'),
      json('rules'),
      text('person'),
      text('account_id'),
      instant('recorded_at'),
    ]);
    await createTable(runner, 'notice_address', [id(), ...maybe('mail', 'phone'), instant('updated_at')]);
  }
}
