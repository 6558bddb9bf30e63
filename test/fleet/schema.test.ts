import { expect, it } from 'vitest';
import { FLEET_ROWS } from '../../src/server/fleet/database/fleet-rows.js';
import { describeEngines } from '../support/databases.js';
import { schemaDrift } from '../support/schema-drift.js';

describeEngines('the tables of the fleet', { rows: FLEET_ROWS }, (desk) => {
  it('are what the rows declare', async () => {
    expect(await schemaDrift(desk.target, FLEET_ROWS)).toEqual([]);
  });

  it('keep one craft in the fleet by a name, and any number of retired ones', async () => {
    const insert = (id: string, retiredOn: string | null) =>
      desk.plainSql(
        'INSERT INTO craft (id, version, sort_key, retired_on, unit_name, type, in_service) VALUES ($1, 1, $2, $3, $4, $5, $6)',
        [id, 'pwc 7', retiredOn, 'PWC 7', 'personal-watercraft', true],
      );
    await insert('a', '2024-09-30');
    await insert('b', '2025-09-30');
    await insert('c', null);
    await expect(insert('d', null)).rejects.toMatchObject({ code: 'DATABASE.UNIQUE' });
  });

  it.each([['craft_note'], ['service_step']])('%s refers to a craft that is there', async (table) => {
    const specific =
      table === 'craft_note'
        ? { about: 'maintenance', text: 'x' }
        : { sequence: 1, kind: 'taken-out', at: '2026-06-13T16:20:00.000Z', step: '{}' };
    const row = {
      id: 'n',
      craft_id: 'nowhere',
      person: 'x',
      recorded_at: '2026-06-13T16:20:00.000Z',
      ...specific,
    };
    const names = Object.keys(row);
    const insert = desk.plainSql(
      `INSERT INTO ${table} (${names.join(', ')}) VALUES (${names.map((_, place) => `$${place + 1}`).join(', ')})`,
      Object.values(row),
    );
    await expect(insert).rejects.toMatchObject({ code: 'DATABASE.REFERENCE' });
  });
});
