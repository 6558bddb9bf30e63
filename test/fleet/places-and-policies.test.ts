import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CreateOnceRow } from '../../src/server/platform/database/create-once.row.js';
import { FLEET_ROWS } from '../../src/server/fleet/database/fleet-rows.js';
import { POLICY_SENT, STATION_SENT } from '../../src/server/fleet/fleet-examples.js';
import { describeEngines } from '../support/databases.js';
import { addCraft, bodyOf, type FleetServer, startFleet } from './fleet-server.js';

describeEngines('places, stations and policies', { rows: [CreateOnceRow, ...FLEET_ROWS] }, (desk) => {
  let server: FleetServer;
  beforeAll(async () => {
    server = await startFleet(desk);
  });
  afterAll(() => server.close());
  const aCraft = (different: object = {}) => addCraft(server, different);

  describe('places and stations', () => {
    // 33° 49.08' N is 33 + 49.08/60 = 33.818; 96° 34.26' W is -(96 + 34.26/60) = -96.571.
    it.each([
      ['33 49.08 N 96 34.26 W', 'degrees-minutes'],
      ['33.818, -96.571', 'decimal-degrees'],
      ['33 49 04.8 N, 96 34 15.6 W', 'degrees-minutes-seconds'],
    ])('take the position %s and give degrees', async (position, notation) => {
      const place = await server.post('/api/places', { name: 'A spot', position }).expect(201);
      expect(place.body).toMatchObject({ position, positionReading: { notation, remarks: [] } });
      const { latitude, longitude } = bodyOf<{ latitude: number; longitude: number }>(place);
      expect(latitude).toBeCloseTo(33.818, 6);
      expect(longitude).toBeCloseTo(-96.571, 6);
    });

    it('say when a position looks like a slip', async () => {
      const place = await server
        .post('/api/places', { name: 'East?', position: '33.818 96.571' })
        .expect(201);
      expect(place.body).toMatchObject({ positionReading: { remarks: [{ code: 'perhaps-west' }] } });
    });

    it('refuse what is no position, and say how to write one', async () => {
      const refused = await server
        .post('/api/places', { name: 'X', position: 'by the big tree' })
        .expect(422);
      expect(refused.body).toMatchObject({ errors: [{ pointer: '/position' }] });
    });

    it('of a station, each number can be reached', async () => {
      const created = await server.post('/api/stations', STATION_SENT).expect(201);
      const stationId = String(bodyOf(created)['id']);
      const numbers = [
        { id: 'n1', of: 'tow', name: 'Tow', phone: 'call Bob' },
        { id: 'n1', of: 'plumber', name: 'P', channel: 'VHF 16' },
      ];
      const station = { name: 'South dock', timeZone: 'America/Chicago', numbers };
      const refused = await server.post('/api/stations', station).expect(422);
      expect(refused.body).toMatchObject({
        errors: [{ pointer: '/numbers/0/phone' }, { pointer: '/numbers/1/id' }, { pointer: '/numbers/1/of' }],
      });
      const silent = { ...station, numbers: [{ id: 'n1', of: 'tow', name: 'Tow' }] };
      expect((await server.post('/api/stations', silent).expect(422)).body).toMatchObject({
        errors: [{ pointer: '/numbers/0/phone' }],
      });
      expect(await server.fleet.numbersOf(stationId)).toEqual(STATION_SENT.numbers);
      expect(await server.fleet.numbersOf(randomUUID())).toEqual([]);
    });
  });

  describe('policies', () => {
    it('end after they begin, and schedule craft that are there', async () => {
      const { id } = await aCraft();
      const backwards = {
        ...POLICY_SENT,
        scheduledCraft: [id],
        firstDay: '2026-05-02',
        lastDay: '2026-05-01',
      };
      expect((await server.post('/api/policies', backwards).expect(422)).body).toMatchObject({
        errors: [{ pointer: '/lastDay' }],
      });
      const unknown = { ...POLICY_SENT, scheduledCraft: [id, randomUUID()] };
      expect((await server.post('/api/policies', unknown).expect(422)).body).toMatchObject({
        errors: [{ pointer: '/scheduledCraft/1' }],
      });
    });

    it('take a number that looks like a card, as policies have such', async () => {
      await server
        .post('/api/policies', { ...POLICY_SENT, scheduledCraft: [], number: '4111111111111111' })
        .expect(201);
    });

    it('are found for a craft on each day of their period and no other', async () => {
      const { id } = await aCraft();
      const period = { firstDay: '2026-05-01', lastDay: '2026-05-31' };
      await server.post('/api/policies', { ...POLICY_SENT, ...period, scheduledCraft: [id] }).expect(201);
      const cancelled = { ...POLICY_SENT, ...period, scheduledCraft: [id], retiredOn: '2026-05-02' };
      await server.post('/api/policies', cancelled).expect(201);
      const counts = await Promise.all(
        ['2026-04-30', '2026-05-01', '2026-05-31', '2026-06-01'].map(
          async (day) => (await server.fleet.policiesFor(id, day)).length,
        ),
      );
      expect(counts).toEqual([0, 1, 1, 0]);
    });
  });
});
