import type { QueryRunner } from 'typeorm';
import { choice, day, flag, id, instant, integer, json, reference, text } from './kit/columns.js';
import { indexWords } from './kit/index-words.js';
import { Migration } from './kit/migration.js';
import { createTable } from './kit/tables.js';

/** Incidents with their sections, the log of amendments behind them, drafts, and what counsel asked for. */
export class CreateRecord1795615200000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'incident',
      [
        id(),
        text('reference'),
        instant('opened_at'),
        choice('status', ['open', 'closed']),
        integer('version'),
        integer('latest_amendment'),
        instant('updated_at'),
        json('summary'),
      ],
      {
        unique: [['reference']],
        indexes: [{ columns: ['opened_at', 'id'] }, { columns: ['status', 'opened_at', 'id'] }],
      },
    );
    await createTable(
      runner,
      'incident_section',
      [
        reference('incident_id', 'incident'),
        text('section'),
        json('document'),
        integer('version'),
        flag('finished'),
        integer('latest_amendment'),
        instant('updated_at'),
        text('words'),
      ],
      { primary: ['incident_id', 'section'] },
    );
    await indexWords(runner, {
      table: 'incident_section',
      key: ['incident_id', 'section'],
      column: 'words',
    });
    await createTable(
      runner,
      'amendment',
      [
        integer('sequence'),
        reference('incident_id', 'incident'),
        text('section'),
        text('who', { nullable: true }),
        text('device', { nullable: true }),
        instant('made_at'),
        json('changes'),
        json('openings'),
        text('reason_commitment', { nullable: true }),
        json('reason_opening', { nullable: true }),
        text('leaf_hash'),
      ],
      { primary: ['sequence'], indexes: [{ columns: ['incident_id', 'sequence'] }] },
    );
    await createTable(runner, 'record_log', [
      id(),
      integer('size'),
      text('root'),
      json('nodes'),
      instant('last_at', { nullable: true }),
    ]);
    await createTable(runner, 'reference_year', [integer('year'), integer('last')], { primary: ['year'] });
    await this.createDraftsAndPrivileged(runner);
  }

  private async createDraftsAndPrivileged(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'section_draft',
      [
        reference('incident_id', 'incident'),
        text('section'),
        text('holder'),
        json('document'),
        integer('version'),
        instant('saved_at'),
      ],
      { primary: ['incident_id', 'section', 'holder'] },
    );
    await createTable(
      runner,
      'counsel_request',
      [
        id(),
        reference('incident_id', 'incident'),
        text('counsel'),
        text('counsel_account', { nullable: true }),
        day('requested_on'),
        text('entered_by'),
        instant('entered_at'),
      ],
      { indexes: [{ columns: ['incident_id'] }, { columns: ['counsel_account'] }] },
    );
    await createTable(
      runner,
      'privileged_entry',
      [
        id(),
        reference('request_id', 'counsel_request'),
        text('written_by'),
        instant('written_at'),
        text('words'),
      ],
      { indexes: [{ columns: ['request_id'] }] },
    );
  }
}
