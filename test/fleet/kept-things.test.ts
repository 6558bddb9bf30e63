import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { CreateOnceRow } from '../../src/server/platform/database/create-once.row.js';
import { FLEET_ROWS } from '../../src/server/fleet/database/fleet-rows.js';
import { CRAFT_SENT, PLACE_SENT, POLICY_SENT, STATION_SENT } from '../../src/server/fleet/fleet-examples.js';
import { describeEngines } from '../support/databases.js';
import { addCraft, bodyOf, type FleetServer, startFleet } from './fleet-server.js';

describeEngines('each kind of the fleet over HTTP', { rows: [CreateOnceRow, ...FLEET_ROWS] }, (desk) => {
  let server: FleetServer;
  let stationId: string;
  beforeAll(async () => {
    server = await startFleet(desk);
    const station = await server.post('/api/stations', STATION_SENT).expect(201);
    stationId = String(bodyOf(station)['id']);
  });
  afterAll(() => server.close());
  const aCraft = () => addCraft(server);

  const kinds: [path: string, sent: () => Promise<object>][] = [
    ['/api/craft', () => Promise.resolve({ ...CRAFT_SENT, stationId })],
    ['/api/stations', () => Promise.resolve(STATION_SENT)],
    ['/api/places', () => Promise.resolve({ ...PLACE_SENT, stationId })],
    ['/api/policies', async () => ({ ...POLICY_SENT, scheduledCraft: [(await aCraft()).id] })],
  ];

  it.each(kinds)('%s is created, read, changed with its tag, and every version kept', async (path, sent) => {
    const details = await sent();
    const created = await server.post(path, details).expect(201).expect('etag', '"1"');
    const shown = bodyOf(created);
    const address = `${path}/${String(shown['id'])}`;
    expect(created.headers['location']).toBe(address);
    expect(shown).toMatchObject({ version: 1, ...details });

    const read = await server.get(address, 'manager').expect(200).expect('etag', '"1"');
    expect(read.body).toEqual(shown);

    const changed = { ...details, retiredOn: '2026-10-31' };
    const put = await server.put(address, changed, '"1"').expect(200).expect('etag', '"2"');
    expect(put.body).toMatchObject({ version: 2, ...changed });
    expect(bodyOf(await server.get(address, 'manager'))).toEqual(put.body);

    const versions = bodyOf<{ items: object[] }>(
      await server.get(`${address}/versions`, 'manager').expect(200),
    );
    expect(versions).toMatchObject({
      items: [
        { version: 2, details: changed, person: 'The manager', device: 'Dock phone 2', role: 'manager' },
        { version: 1, details },
      ],
      next: null,
    });
  });

  it.each(kinds)(
    '%s refuses a stale change with both versions, and keeps neither half',
    async (path, sent) => {
      const details = await sent().then((one) =>
        path === '/api/craft' ? { ...one, unitName: `Stale ${desk.engine}` } : one,
      );
      const { id } = bodyOf<{ id: string }>(await server.post(path, details).expect(201));
      const mine = { ...details, retiredOn: '2026-09-30' };
      const theirs = { ...details, retiredOn: '2026-10-31' };
      await server.put(`${path}/${id}`, theirs, '"1"').expect(200);
      const refused = await server.put(`${path}/${id}`, mine, '"1"').expect(412);
      expect(refused.body).toMatchObject({
        type: '/problems/changed-meanwhile',
        current: { version: 2, retiredOn: '2026-10-31' },
        yours: mine,
        errors: [{ pointer: '/retiredOn' }],
      });
      expect(bodyOf(await server.get(`${path}/${id}`, 'manager'))['retiredOn']).toBe('2026-10-31');
      await server.put(`${path}/${id}`, mine, undefined).expect(428);
    },
  );

  it.each(kinds)('%s is created once for a key, however often it is sent', async (path, sent) => {
    const one = await sent();
    const details = path === '/api/craft' ? { ...one, unitName: `Once ${desk.engine}` } : one;
    const key = randomUUID();
    const answers = await Promise.all(
      Array.from({ length: 5 }, () => server.post(path, details, 'manager', key).expect(201)),
    );
    const ids = new Set(answers.map((answer) => String(bodyOf(answer)['id'])));
    expect(ids.size).toBe(1);
    const other = await server
      .post(path, { ...details, retiredOn: '2026-10-31' }, 'manager', key)
      .expect(422);
    expect(bodyOf(other)['type']).toBe('/problems/idempotency-key-used');
    await server.post(path, details, 'manager', '').expect(400);
  });

  it.each(kinds)('%s answers 404 to an id of none', async (path, sent) => {
    const address = `${path}/${randomUUID()}`;
    await server.get(address, 'manager').expect(404);
    await server.get(`${address}/versions`, 'manager').expect(404);
    await server.put(address, await sent(), '"1"').expect(404);
    await server.get(`${path}/${'x'.repeat(50)}`, 'manager').expect(404);
  });

  it.each(kinds)('%s refuses unknown members and wrong values by pointer', async (path, sent) => {
    const details = { ...(await sent()), weather: 'fine', retiredOn: '31 October' };
    const refused = await server.post(path, details).expect(422);
    expect(refused.headers['content-type']).toMatch(/^application\/problem\+json/);
    expect(refused.body).toMatchObject({
      type: '/problems/invalid-input',
      source: 'request',
      errors: [{ pointer: '/retiredOn' }, { pointer: '/weather' }],
    });
    await server.post(path, []).expect(422);
  });

  it.each([
    ['/api/craft', 'staff', 200, 403],
    ['/api/craft', 'counsel', 403, 403],
    ['/api/craft', 'device', 403, 403],
    ['/api/stations', 'staff', 200, 403],
    ['/api/places', 'staff', 200, 403],
    ['/api/policies', 'staff', 403, 403],
    ['/api/policies', 'manager', 200, 422],
    ['/api/policies', 'administrator', 200, 422],
    ['/api/release-amounts', 'staff', 200, 403],
    ['/api/release-amounts', 'manager', 200, 403],
    ['/api/release-amounts', 'administrator', 200, 422],
  ] as const)('%s for %s: read %d, write %d', async (path, who, read, write) => {
    await server.get(path, who).expect(read);
    await server.post(path, {}, who).expect(write);
  });
});
