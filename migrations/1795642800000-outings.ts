import type { QueryRunner } from 'typeorm';
import { day, id, instant, integer, json, reference, text } from './kit/columns.js';
import { Migration } from './kit/migration.js';
import { createTable } from './kit/tables.js';

const NULLABLE = { nullable: true };

/** Craft that go out and come back, those that do not, and the count at closing; everything that happened to each is kept. */
export class CreateOutings1795642800000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'outing',
      [
        id(),
        reference('craft_id', 'craft'),
        json('details'),
        instant('out_at', NULLABLE),
        instant('due_back_at', NULLABLE),
        instant('back_at', NULLABLE),
        integer('version'),
        instant('created_at'),
        instant('updated_at'),
      ],
      { indexes: [{ columns: ['craft_id', 'created_at'] }, { columns: ['back_at'] }] },
    );
    await createTable(
      runner,
      'not_back',
      [
        id(),
        reference('craft_id', 'craft'),
        reference('outing_id', 'outing', NULLABLE),
        instant('opened_at'),
        text('opened_by'),
        json('sheet'),
        json('climbed'),
        text('ended', NULLABLE),
        instant('ended_at', NULLABLE),
        text('ended_by', NULLABLE),
        text('ended_how', NULLABLE),
        text('not_incident', NULLABLE),
        text('not_incident_by', NULLABLE),
        reference('incident_id', 'incident', NULLABLE),
        integer('version'),
        instant('updated_at'),
      ],
      {
        indexes: [
          { columns: ['craft_id', 'opened_at'] },
          { columns: ['ended'] },
          { columns: ['incident_id'] },
        ],
      },
    );
    await createTable(
      runner,
      'closing_count',
      [
        id(),
        reference('station_id', 'station', NULLABLE),
        day('day'),
        json('answers'),
        text('opened_by'),
        instant('opened_at'),
        text('closed_by_id', NULLABLE),
        text('closed_by', NULLABLE),
        instant('closed_at', NULLABLE),
        json('outcome', NULLABLE),
        integer('version'),
      ],
      { indexes: [{ columns: ['day'] }, { columns: ['closed_at'] }] },
    );
    await createTable(
      runner,
      'outing_event',
      [
        id(),
        text('subject'),
        text('subject_id'),
        integer('sequence'),
        text('kind'),
        instant('at'),
        json('document'),
        text('person'),
        text('account_id', NULLABLE),
        text('device', NULLABLE),
      ],
      { unique: [['subject', 'subject_id', 'sequence']] },
    );
  }
}
