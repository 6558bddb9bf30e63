import type { QueryRunner } from 'typeorm';
import {
  cents,
  choice,
  type Column,
  day,
  flag,
  id,
  instant,
  integer,
  json,
  number,
  reference,
  text,
} from './kit/columns.js';
import { Migration } from './kit/migration.js';
import { createTable } from './kit/tables.js';

const NULLABLE = { nullable: true };
const maybe = (...names: string[]): Column[] => names.map((name) => text(name, NULLABLE));

/** What craft, stations, places and policies have in common. */
const KEPT = [id(), integer('version'), text('sort_key'), day('retired_on', NULLABLE)];

/** Who, on which device, when it was written down. */
const BY = [text('person'), ...maybe('account_id', 'role', 'device', 'device_id'), instant('recorded_at')];

const POSITION = [text('position', NULLABLE), number('latitude', NULLABLE), number('longitude', NULLABLE)];

/** The fleet: craft and their service, stations, places and policies, each with all its versions. */
export class CreateFleet1795611600000 extends Migration {
  async up(runner: QueryRunner): Promise<void> {
    await createTable(runner, 'station', [
      ...KEPT,
      text('name'),
      text('time_zone'),
      ...maybe('state', 'address'),
      ...POSITION,
      json('numbers', NULLABLE),
    ]);
    await createTable(
      runner,
      'craft',
      [
        ...KEPT,
        text('unit_name'),
        text('type'),
        json('colours', NULLABLE),
        ...maybe('hull_number', 'registration_number', 'hull_material', 'propulsion', 'engine_drive', 'fuel'),
        ...maybe('make', 'model'),
        integer('model_year', NULLABLE),
        number('length_ft', NULLABLE),
        ...maybe('engine_make', 'engine_number'),
        number('horsepower', NULLABLE),
        integer('capacity_people', NULLABLE),
        integer('capacity_lb', NULLABLE),
        reference('station_id', 'station', NULLABLE),
        flag('in_service'),
      ],
      {
        indexes: [
          {
            columns: ['sort_key'],
            unique: true,
            where: '"retired_on" IS NULL',
            name: 'ix_craft_unit_name',
          },
        ],
      },
    );
    await createTable(runner, 'place', [
      ...KEPT,
      text('name'),
      json('also_called', NULLABLE),
      ...POSITION,
      ...maybe('water_body', 'nearest_town', 'county', 'state', 'directions'),
      reference('station_id', 'station', NULLABLE),
    ]);
    await createTable(runner, 'policy', [
      ...KEPT,
      text('number'),
      text('insurer'),
      text('covers', NULLABLE),
      day('first_day'),
      day('last_day'),
      json('scheduled_craft'),
      ...maybe('notice_phone', 'notice_mail', 'notice_terms'),
      cents('deductible_cents', NULLABLE),
    ]);
    await createTable(
      runner,
      'kept_version',
      [id(), text('thing_id'), text('kind'), integer('version'), json('details'), ...BY],
      { unique: [['thing_id', 'version']] },
    );
    await this.createLogs(runner);
  }

  private async createLogs(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'craft_note',
      [
        id(),
        reference('craft_id', 'craft'),
        choice('about', ['maintenance', 'prior-trip', 'inspection']),
        text('text'),
        day('day', NULLABLE),
        number('hour_meter', NULLABLE),
        ...BY,
      ],
      { indexes: [{ columns: ['craft_id', 'recorded_at'] }] },
    );
    await createTable(
      runner,
      'service_step',
      [
        id(),
        reference('craft_id', 'craft'),
        integer('sequence'),
        text('kind'),
        text('incident_id', NULLABLE),
        instant('at'),
        json('step'),
        ...BY,
      ],
      { unique: [['craft_id', 'sequence']], indexes: [{ columns: ['incident_id'] }] },
    );
    await createTable(runner, 'release_amount', [id(), integer('version'), cents('amount_cents'), ...BY], {
      unique: [['version']],
    });
  }
}
