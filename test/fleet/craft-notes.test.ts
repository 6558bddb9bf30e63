import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { CreateOnceRow } from '../../src/server/platform/database/create-once.row.js';
import { FLEET_ROWS } from '../../src/server/fleet/database/fleet-rows.js';
import { NOTE_SENT } from '../../src/server/fleet/fleet-examples.js';
import { describeEngines } from '../support/databases.js';
import { addCraft, bodyOf, type FleetServer, startFleet } from './fleet-server.js';

describeEngines('notes about craft', { rows: [CreateOnceRow, ...FLEET_ROWS] }, (desk) => {
  let server: FleetServer;
  beforeAll(async () => {
    server = await startFleet(desk);
  });
  afterAll(() => server.close());

  it('are added with who, device and when, and read a page at a time, the newest first', async () => {
    const { id } = await addCraft(server);
    for (const text of ['one', 'two', 'three']) {
      const sent = { about: 'maintenance', text };
      await server.post(`/api/craft/${id}/notes`, sent, text === 'two' ? 'device' : 'staff').expect(201);
    }
    const first = bodyOf<{ items: object[]; next: string }>(
      await server.get(`/api/craft/${id}/notes?limit=2`).expect(200),
    );
    expect(first.items).toMatchObject([
      { text: 'three', person: 'The staff', role: 'staff', device: 'Dock phone 2', day: null },
      { text: 'two', person: 'not named', role: null },
    ]);
    const rest = await server.get(`/api/craft/${id}/notes?limit=2&after=${first.next}`).expect(200);
    expect(rest.body).toMatchObject({ items: [{ text: 'one' }], next: null });
  });

  it('come back as they were sent, once for a key', async () => {
    const { id } = await addCraft(server);
    const key = randomUUID();
    const sent = { ...NOTE_SENT, text: 'Pulls left.\nNew pump? “Nein” — ñ' };
    const note = await server.post(`/api/craft/${id}/notes`, sent, 'staff', key).expect(201);
    expect(note.body).toMatchObject({ craft: id, ...sent });
    const again = await server.post(`/api/craft/${id}/notes`, sent, 'staff', key).expect(201);
    expect(again.body).toEqual(note.body);
  });

  it.each<[string, object, string]>([
    ['another subject', { ...NOTE_SENT, about: 'gossip' }, '/about'],
    ['no text', { about: 'maintenance', text: ' \n' }, '/text'],
    ['a NUL far into the text', { about: 'maintenance', text: `${'x'.repeat(600)}\u0000` }, '/text'],
    ['a Social Security number', { about: 'prior-trip', text: 'renter 219-09-9999' }, '/text'],
    ['a day of no calendar', { ...NOTE_SENT, day: '2026-13-01' }, '/day'],
    ['another member', { ...NOTE_SENT, by: 'me' }, '/by'],
  ])('refuse %s', async (_name, sent, pointer) => {
    const { id } = await addCraft(server);
    const refused = await server.post(`/api/craft/${id}/notes`, sent, 'staff').expect(422);
    expect(refused.body).toMatchObject({ errors: [{ pointer }] });
  });

  it('are of craft that are there', async () => {
    await server.post(`/api/craft/${randomUUID()}/notes`, NOTE_SENT, 'staff').expect(404);
    await server.get(`/api/craft/${randomUUID()}/notes`).expect(404);
  });

  it("the owner's amounts are kept one behind the other, and the last one counts", async () => {
    for (const amountCents of [50_000, 80_000]) {
      await server.post('/api/release-amounts', { amountCents }, 'administrator').expect(201);
    }
    const amounts = await server.get('/api/release-amounts').expect(200);
    expect(amounts.body).toMatchObject({
      items: [
        { version: 2, amountCents: 80_000, person: 'The administrator' },
        { version: 1, amountCents: 50_000 },
      ],
    });
    for (const amountCents of [-1, 0.5, '500', 2_147_483_648]) {
      await server.post('/api/release-amounts', { amountCents }, 'administrator').expect(422);
    }
  });
});
