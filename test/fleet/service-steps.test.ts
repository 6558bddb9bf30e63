import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { CreateOnceRow } from '../../src/server/platform/database/create-once.row.js';
import { FLEET_ROWS } from '../../src/server/fleet/database/fleet-rows.js';
import { describeEngines } from '../support/databases.js';
import { addCraft, bodyOf, type FleetServer, startFleet } from './fleet-server.js';
import { CLEARED, NO_HARM, serviceTools, type StepPage } from './service-tools.js';

describeEngines('the steps of service', { rows: [CreateOnceRow, ...FLEET_ROWS] }, (desk) => {
  let server: FleetServer;
  beforeAll(async () => {
    server = await startFleet(desk);
  });
  afterAll(() => server.close());
  const { step, serviceOf, stepsOf, aHeldCraft } = serviceTools(() => server);

  it('keeps every step with person, device and both times, and a page at a time', async () => {
    const { craft } = await aHeldCraft();
    const at = '2026-06-13T10:00:00-05:00';
    await step(craft, { kind: 'do-not-start', reason: 'wet', at }, 'shift-lead').expect(201);
    await step(craft, { kind: 'do-not-start', reason: 'still wet' }, 'device').expect(201);
    const [last, before] = await stepsOf(craft);
    expect(last).toMatchObject({ sequence: 3, person: 'not named', device: 'Dock phone 2' });
    expect(last?.at).toBe(last?.recordedAt);
    expect(before).toMatchObject({ person: 'The shift-lead', at: '2026-06-13T15:00:00.000Z' });
    expect(before?.recordedAt).not.toBe(before?.at);
    const sequences: number[] = [];
    let after = '';
    do {
      const page = bodyOf<StepPage>(
        await server.get(`/api/craft/${craft}/service-steps?limit=2${after}`).expect(200),
      );
      sequences.push(...page.items.map(({ sequence }) => sequence));
      after = page.next === null ? '' : `&after=${page.next}`;
    } while (after !== '');
    expect(sequences).toEqual([3, 2, 1]);
  });

  it.each<[string, object, string]>([
    ['no kind', { reason: 'x' }, '/kind'],
    [
      'a kind that only the record tells',
      { kind: 'weighed', incident: randomUUID(), consequence: NO_HARM },
      '/kind',
    ],
    [
      'an incident taking it out from outside',
      { kind: 'taken-out', incident: randomUUID(), reason: 'x' },
      '/incident',
    ],
    ['a claim of how grave it was', { kind: 'released', gravity: 'damage-only' }, '/gravity'],
    ['no reason', { kind: 'do-not-start' }, '/reason'],
    ['no photograph', { kind: 'photographed', photographs: [] }, '/photographs'],
    ['a clearance of anybody', { ...CLEARED, incident: randomUUID(), by: 'mechanic' }, '/by'],
    ['a time without offset', { kind: 'taken-out', reason: 'x', at: '2026-06-13T10:00:00' }, '/at'],
    ['a card number', { kind: 'taken-out', reason: 'paid with 4111 1111 1111 1111' }, '/reason'],
  ])('refuses a step with %s', async (_name, sent, pointer) => {
    const { id } = await addCraft(server);
    const refused = await step(id, sent, 'manager').expect(422);
    expect(refused.body).toMatchObject({ errors: [{ pointer }] });
    expect(JSON.stringify(refused.body)).not.toContain('4111');
    expect(await stepsOf(id)).toEqual([]);
  });

  it('has nothing for a craft that is not there', async () => {
    const nowhere = `/api/craft/${randomUUID()}`;
    await server.get(`${nowhere}/service`).expect(404);
    await server.get(`${nowhere}/service-steps`).expect(404);
    await server.post(`${nowhere}/service-steps`, { kind: 'taken-out', reason: 'x' }).expect(404);
  });

  it('numbers steps without a gap when many arrive at once, each once for its key', async () => {
    const { craft } = await aHeldCraft();
    const sent = Array.from({ length: 12 }, (_, place) => ({
      kind: 'do-not-start',
      reason: `reason ${place}`,
    }));
    const keys = sent.map(() => randomUUID());
    const twice = [...sent, ...sent].map((one, place) =>
      step(craft, one, 'device', keys[place % sent.length]),
    );
    const answers = await Promise.all(twice);
    expect(new Set(answers.map(({ status }) => status))).toEqual(new Set([201]));
    const steps = await stepsOf(craft);
    expect(steps.map(({ sequence }) => sequence)).toEqual(
      Array.from({ length: 13 }, (_, place) => 13 - place),
    );
    expect((await serviceOf(craft)).doNotStart.toSorted()).toEqual(
      sent.map(({ reason }) => reason).toSorted(),
    );
  });
});
