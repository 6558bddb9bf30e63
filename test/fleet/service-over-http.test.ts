import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CreateOnceRow } from '../../src/server/platform/database/create-once.row.js';
import { FLEET_ROWS } from '../../src/server/fleet/database/fleet-rows.js';
import { describeEngines } from '../support/databases.js';
import { actorOf, addCraft, bodyOf, type FleetServer, startFleet, type Who } from './fleet-server.js';
import { CLEARED, codesOf, DEATH, NO_HARM, serviceTools } from './service-tools.js';

describeEngines('the service of craft', { rows: [CreateOnceRow, ...FLEET_ROWS] }, (desk) => {
  let server: FleetServer;
  beforeAll(async () => {
    server = await startFleet(desk);
    await server.post('/api/release-amounts', { amountCents: 50_000 }, 'administrator').expect(201);
  });
  afterAll(() => server.close());

  const { step, serviceOf, stepsOf, aHeldCraft } = serviceTools(() => server);

  it('begins in service', async () => {
    const { id } = await addCraft(server);
    expect(await serviceOf(id)).toEqual({
      craft: id,
      inService: true,
      holds: [],
      released: [],
      heldByAgency: null,
      custodyGaps: [],
      doNotStart: [],
    });
  });

  it('ends with an incident, once, and says so in the list', async () => {
    const { craft, incident, unitName } = await aHeldCraft();
    await server.fleet.takeOut({ craft, incident, reason: 'again' }, actorOf('staff'));
    const service = await serviceOf(craft, 'shift-lead');
    expect(service).toMatchObject({
      inService: false,
      holds: [
        { incident, reason: 'Call 2026-0042', gravity: 'unclear', needs: { by: 'manager', clearance: true } },
      ],
    });
    expect(service.holds[0]?.against.map(({ code }) => code)).toEqual([
      'PHOTOGRAPHS_MISSING',
      'CLEARANCE_MISSING',
      'STANDING_TOO_LOW',
    ]);
    expect(await stepsOf(craft)).toHaveLength(1);
    const found = await server.fleet.findCraft(unitName);
    expect(found[0]).toMatchObject({ named: true, craft: { id: craft, inService: false } });
  });

  describe('a release after damage below the amount', () => {
    it.each<[Who, number]>([
      ['staff', 409],
      ['device', 409],
      ['shift-lead', 201],
      ['manager', 201],
      ['administrator', 201],
      ['counsel', 403],
    ])('by %s is answered with %d', async (who, status) => {
      const { craft, incident } = await aHeldCraft(NO_HARM);
      await step(craft, { kind: 'released', incident, photographs: ['p1'] }, who).expect(status);
      expect((await serviceOf(craft)).inService).toBe(status === 201);
    });

    it('takes photographs, with it or before it', async () => {
      const { craft, incident } = await aHeldCraft(NO_HARM);
      const release = { kind: 'released', incident };
      expect(codesOf(await step(craft, release, 'shift-lead').expect(409))).toEqual(['PHOTOGRAPHS_MISSING']);
      await step(craft, { kind: 'photographed', incident, photographs: ['bow', 'stern'] }, 'device').expect(
        201,
      );
      await step(craft, release, 'shift-lead').expect(201);
      expect((await stepsOf(craft))[0]?.step).toMatchObject({
        gravity: 'damage-only',
        ownerAmountCents: 50_000,
      });
    });

    it('is for the shift lead of the day at the station', async () => {
      // At 01:00 UTC on the 14th it is still the 13th at a dock in Texas, and no more so in Tokyo.
      const before = server.clock.instant;
      const station = async (timeZone: string) =>
        bodyOf<{ id: string }>(await server.post('/api/stations', { name: timeZone, timeZone }).expect(201))
          .id;
      const zones: [string, number][] = [
        ['America/Chicago', 201],
        ['Asia/Tokyo', 409],
      ];
      for (const [zone, status] of zones) {
        const { id: craft } = await addCraft(server, { stationId: await station(zone) });
        await step(craft, { kind: 'taken-out', reason: 'loose seat' }).expect(201);
        server.clock.instant = Date.parse('2026-06-14T01:00:00Z');
        await step(craft, { kind: 'released' }, 'shift-lead').expect(status);
        server.clock.instant = before + 60_000;
      }
    });
  });

  describe('a release after a death', () => {
    it('is refused to everyone until a clearance is recorded, and the refusal names every reason', async () => {
      const { craft, incident } = await aHeldCraft(DEATH);
      const release = { kind: 'released', incident, photographs: ['p1'] };
      for (const who of ['manager', 'administrator'] as const) {
        const refused = await step(craft, release, who).expect(409);
        expect(refused.body).toMatchObject({ type: '/problems/not-as-the-craft-stands', status: 409 });
        expect(codesOf(refused)).toEqual(['CLEARANCE_MISSING']);
      }
      expect(codesOf(await step(craft, { ...CLEARED, incident }, 'shift-lead').expect(409))).toEqual([
        'STANDING_TOO_LOW',
      ]);
      await step(craft, { ...CLEARED, incident }, 'manager').expect(201);
      expect(codesOf(await step(craft, release, 'shift-lead').expect(409))).toEqual(['STANDING_TOO_LOW']);
      await step(craft, release, 'manager').expect(201);
      expect(await serviceOf(craft)).toMatchObject({
        inService: true,
        released: [{ incident, gravity: 'grave' }],
      });
    });

    it('cannot lean on a clearance that was given before the death was known', async () => {
      const { craft, incident } = await aHeldCraft(NO_HARM);
      await step(craft, { ...CLEARED, incident }, 'manager').expect(201);
      await server.fleet.tellConsequence({ incident, consequence: DEATH }, actorOf('staff'));
      const refused = await step(craft, { kind: 'released', incident, photographs: ['p'] }, 'manager').expect(
        409,
      );
      expect(codesOf(refused)).toEqual(['CLEARANCE_MISSING']);
    });
  });

  it('ends again when an incident turns out graver than at the release, and only then', async () => {
    const { craft, incident } = await aHeldCraft(NO_HARM);
    await server.fleet.release({ craft, incident, photographs: ['p'], remark: null }, actorOf('shift-lead'));
    await server.fleet.tellConsequence(
      { incident, consequence: { ...NO_HARM, damage: null } },
      actorOf('staff'),
    );
    expect((await serviceOf(craft)).inService).toBe(true);
    await server.fleet.tellConsequence({ incident, consequence: DEATH }, actorOf('staff'));
    expect(await serviceOf(craft)).toMatchObject({
      inService: false,
      holds: [{ incident, gravity: 'grave', photographs: [], clearances: [] }],
    });
    const count = (await stepsOf(craft)).length;
    await server.fleet.tellConsequence({ incident, consequence: DEATH }, actorOf('staff'));
    expect(await stepsOf(craft)).toHaveLength(count);
  });

  it('goes on when the craft was named by mistake, and other incidents keep it in', async () => {
    const { craft, incident } = await aHeldCraft(DEATH);
    await server.fleet.takeOut({ craft, incident: randomUUID(), reason: 'another' }, actorOf('staff'));
    await server.fleet.notConcerned({ craft, incident, reason: 'It was PWC 8.' }, actorOf('staff'));
    expect((await serviceOf(craft)).holds.map((hold) => hold.reason)).toEqual(['another']);
  });

  it('waits while an agency holds the craft, with what is still to be asked', async () => {
    const { craft, incident } = await aHeldCraft(NO_HARM);
    await step(
      craft,
      { kind: 'held-by-agency', agency: 'Wardens', receipt: 'R-1', photographs: ['first'] },
      'device',
    ).expect(201);
    const service = await serviceOf(craft);
    expect(service.heldByAgency).toMatchObject({
      agency: 'Wardens',
      receipt: 'R-1',
      photographs: ['first'],
      officer: null,
    });
    expect(service.custodyGaps).toHaveLength(3);
    const release = { kind: 'released', incident, photographs: ['p'] };
    expect(codesOf(await step(craft, release, 'manager').expect(409))).toEqual(['AGENCY_HOLDS_IT']);
    await step(craft, { kind: 'returned-by-agency', handedOverBy: 'L. Ortiz', hourMeter: 212.4 }).expect(201);
    await step(craft, release, 'manager').expect(201);
    expect((await stepsOf(craft)).map(({ step: { kind } }) => kind)).toContain('held-by-agency');
  });

  it('waits while the engine must not be started, which is lifted with a reason', async () => {
    const { craft, incident } = await aHeldCraft(DEATH);
    await step(craft, { kind: 'do-not-start', reason: 'Engine computer to be read.' }, 'device').expect(201);
    const lift = { kind: 'start-allowed', reason: 'It was read.' };
    expect(codesOf(await step(craft, lift, 'manager').expect(409))).toEqual(['CLEARANCE_MISSING']);
    await step(craft, { ...CLEARED, incident }, 'manager').expect(201);
    expect(
      codesOf(await step(craft, { kind: 'released', incident, photographs: ['p'] }, 'manager').expect(409)),
    ).toEqual(['ENGINE_MUST_NOT_START']);
    await step(craft, lift, 'manager').expect(201);
    expect(await serviceOf(craft)).toMatchObject({ doNotStart: [], inService: false });
  });

  it('is taken out and undone with the unit of work of whoever asks', async () => {
    const { id: craft } = await addCraft(server);
    const failing = desk.unitOfWork.run(async () => {
      await server.fleet.takeOut({ craft, incident: randomUUID(), reason: 'x' }, actorOf('staff'));
      throw new Error('the record failed');
    });
    await expect(failing).rejects.toThrow('the record failed');
    expect((await serviceOf(craft)).inService).toBe(true);
    expect(await stepsOf(craft)).toEqual([]);
  });
});
