import { randomUUID } from 'node:crypto';
import { beforeAll, beforeEach, expect, it } from 'vitest';
import type { HoldsSection } from '../../shared/record/legal-hold.js';
import type { PersonActor } from '../../src/server/accounts/accounts.api.js';
import { Holds, type StartedHold } from '../../src/server/record/record.api.js';
import { describeEngines } from '../support/databases.js';
import { DOCK_PHONE, person, RECORD } from './record-app.js';
import { Client } from './record-desk.js';

const staff = person('staff', 'Ann');
const told = <T>(value: T) => ({ value, known: 'told' });
const RELEASE = { counsel: 'Cleo Law', releasedOn: '2026-09-01', reason: 'Settled.' };

describeEngines('a hold', RECORD, (desk) => {
  const client = new Client(desk);
  const started: StartedHold[] = [];
  let manager: PersonActor;
  let id: string;

  const people = (list: object[], version: number, reason?: string) =>
    client.write(staff, `/${id}/sections/people`, { document: { people: list }, reason }, version);
  const contacts = (list: object[], version: number) =>
    client.write(staff, `/${id}/sections/contacts`, { document: { contacts: list } }, version);
  const holds = async () =>
    (await client.get(staff, `/${id}/holds`)).body as unknown as HoldsSection & { held: boolean };
  const firstHold = async () => String((await holds()).holds?.[0]?.id);
  const post = (actor: PersonActor, path: string, body: object, key: string = randomUUID()) =>
    client.send(actor, 'POST', `/${id}${path}`, body, { 'idempotency-key': key });

  beforeAll(async () => {
    manager = await client.account('manager', 'Max');
    client.app.get(Holds, { strict: false }).onStarted((one) => Promise.resolve(void started.push(one)));
  });
  beforeEach(async () => {
    id = await client.opened(staff);
  });

  it('is none after a bare call, or while harm is not ruled out', async () => {
    await people(
      [
        { id: 'p1', outcome: told('unknown') },
        { id: 'p2', outcome: told('injured') },
      ],
      0,
    );
    expect(await holds()).toEqual({ held: false, holds: [], withdrawals: [] });
    expect(await client.app.get(Holds, { strict: false }).isHeld(id)).toBe(false);
  });

  it.each([
    ['death', { outcome: told('died') }],
    ['missing', { outcome: told('missing') }],
    ['beyond-first-aid', { outcome: told('injured'), care: told('beyond-first-aid') }],
  ])('starts by itself on %s, with whom, and managers as custodians', async (cause, harm) => {
    await people(
      [
        { id: 'p1', ...harm },
        { id: 'p2', outcome: told('unhurt') },
      ],
      0,
    );
    expect(await holds()).toMatchObject({
      held: true,
      holds: [{ cause, of: ['p1'], custodians: [{ id: manager.accountId, name: 'Max', account: true }] }],
    });
    expect(started.at(-1)).toMatchObject({ incidentId: id, hold: { cause } });
    expect(await client.app.get(Holds, { strict: false }).isHeld(id)).toBe(true);
  });

  it('starts on a claim, once; a second claim after its release starts another', async () => {
    const demand = { id: 'k1', writtenDemand: told('yes') };
    await contacts([demand], 0);
    await contacts([{ ...demand, summary: 'Wants 900 dollars.' }], 1);
    expect((await holds()).holds).toMatchObject([{ cause: 'claim', of: ['k1'] }]);
    await post(manager, `/holds/${await firstHold()}/release`, RELEASE);
    await contacts([{ ...demand, summary: 'Wants 900 dollars.', paper: 'Safe' }], 2);
    expect((await holds()).held).toBe(false);
    await contacts(
      [
        { ...demand, summary: 'Wants 900 dollars.', paper: 'Safe' },
        { ...demand, id: 'k2' },
      ],
      3,
    );
    expect(await holds()).toMatchObject({
      held: true,
      holds: [{ released: RELEASE }, { cause: 'claim', of: ['k1', 'k2'] }],
    });
  });

  it('does not end because the record says something milder', async () => {
    await people([{ id: 'p1', outcome: told('missing') }], 0);
    await people([{ id: 'p1', outcome: told('unhurt') }], 1, 'Was at the bar.');
    expect((await holds()).held).toBe(true);
  });

  it('that a refused change would have caused is none', async () => {
    const before = started.length;
    expect((await people([{ id: 'p1', outcome: told('died') }], 7)).status).toBe(412);
    expect([(await holds()).held, started.length]).toEqual([false, before]);
  });

  it('is started by hand with a reason, once for a key', async () => {
    const body = { reason: 'A reporter asked for the video.' };
    expect((await post(staff, '/holds', body)).status).toBe(403);
    expect((await post(manager, '/holds', {})).body).toMatchObject({ errors: [{ pointer: '/reason' }] });
    const key = randomUUID();
    expect((await post(manager, '/holds', body, key)).status).toBe(201);
    expect((await post(manager, '/holds', body, key)).body['holds']).toMatchObject([
      { cause: 'by-hand', startedBy: 'Max', ...body },
    ]);
    expect((await client.send(manager, 'POST', `/${id}/holds`, body)).status).toBe(400);
    expect((await client.get(DOCK_PHONE, `/${id}/holds`)).status).toBe(403);
  });

  it('is acknowledged by its custodians, each for themselves; for those without an account by a manager', async () => {
    const ann = await client.account('staff', 'Ann');
    const counsel = await client.account('counsel', 'Cleo');
    await post(manager, '/holds', { reason: 'Press.' });
    const hold = `/holds/${await firstHold()}`;
    const name = (body: object) => post(manager, `${hold}/custodians`, body);
    const acknowledge = (actor: PersonActor, body: object) => post(actor, `${hold}/acknowledgements`, body);

    expect((await post(staff, `${hold}/custodians`, { name: 'Sam' })).status).toBe(403);
    for (const body of [
      {},
      { name: ' ' },
      { account: ann.accountId, name: 'Ann' },
      { account: counsel.accountId },
    ])
      expect((await name(body)).body).toMatchObject({ errors: [{ pointer: '/account' }] });
    expect((await acknowledge(ann, {})).status).toBe(422);
    await name({ account: ann.accountId });
    await name({ account: ann.accountId });
    await name({ name: 'Sam Dock' });
    await name({ name: 'Sam Dock' });
    const custodians = async () => (await holds()).holds?.[0]?.custodians ?? [];
    expect((await custodians()).map((one) => one.name)).toEqual(['Max', 'Ann', 'Sam Dock']);
    const sam = String((await custodians())[2]?.id);

    expect((await acknowledge(ann, {})).status).toBe(200);
    expect((await acknowledge(ann, { custodian: sam })).status).toBe(403);
    expect((await acknowledge(manager, { custodian: sam })).status).toBe(200);
    expect((await acknowledge(ann, { custodian: manager.accountId })).status).toBe(403);
    expect(await custodians()).toMatchObject([
      { name: 'Max' },
      { name: 'Ann', acknowledgedAt: expect.any(String) as string },
      { name: 'Sam Dock', acknowledgedTo: 'Max' },
    ]);
    expect((await custodians())[0]).not.toHaveProperty('acknowledgedAt');
  });

  it('ends by counsel, named with day and reason and entered by a manager, and once', async () => {
    await post(manager, '/holds', { reason: 'Press.' });
    const path = `/holds/${await firstHold()}/release`;
    expect((await post(staff, path, RELEASE)).status).toBe(403);
    expect((await post(manager, path, { reason: 'Enough.' })).body).toMatchObject({
      errors: [{ pointer: '/counsel' }, { pointer: '/releasedOn' }],
    });
    expect((await post(manager, '/holds/none/release', RELEASE)).status).toBe(404);
    expect((await post(manager, path, RELEASE)).body).toMatchObject({
      held: false,
      holds: [{ released: { ...RELEASE, enteredBy: 'Max' } }],
    });
    expect((await post(manager, path, RELEASE)).status).toBe(409);
  });

  it('lets nothing out of the record but on the direction of counsel, which is noted', async () => {
    await people([{ id: 'p1', name: 'Zed', outcome: told('died') }], 0);
    const withdrawal = { path: '/people/p1/name', reason: 'Of another person.' };
    const path = '/sections/people/withdrawals';
    expect(await post(manager, path, withdrawal)).toMatchObject({
      status: 409,
      body: {
        errors: [{ pointer: '/counsel', detail: expect.stringMatching(/direction of counsel/) as string }],
      },
    });
    const half = { ...withdrawal, counsel: 'Cleo Law' };
    expect((await post(manager, path, half)).body).toMatchObject({ errors: [{ pointer: '/directedOn' }] });
    expect((await client.get(staff, `/${id}/sections/people`)).body).toMatchObject({
      document: { people: [{ name: 'Zed' }] },
    });
    expect((await post(manager, path, { ...half, directedOn: '2026-06-20' })).status).toBe(200);
    expect((await holds()).withdrawals).toMatchObject([
      { section: 'people', path: '/people/p1/name', counsel: 'Cleo Law', directedOn: '2026-06-20' },
    ]);
  });

  it('gives up the words of a reason, and nothing else of it', async () => {
    await post(manager, '/holds', { reason: 'Vexillology.' });
    const hold = await firstHold();
    const path = '/sections/holds/withdrawals';
    const directed = { counsel: 'Cleo Law', directedOn: '2026-06-20', reason: 'Was advice.' };
    for (const kept of [`/holds/${hold}`, `/holds/${hold}/since`, '/holds'])
      expect((await post(manager, path, { path: kept, ...directed })).status).toBe(404);
    const reason = { path: `/holds/${hold}/reason`, ...directed };
    expect((await post(manager, path, { ...reason, counsel: undefined })).status).toBe(409);
    expect((await post(manager, path, reason)).status).toBe(200);
    expect(await holds()).toMatchObject({ held: true, holds: [{ id: hold, cause: 'by-hand' }] });
    const rows = await Promise.all(
      ['amendment', 'incident_section'].map((table) => desk.plainSql(`SELECT * FROM ${table}`)),
    );
    expect(JSON.stringify(rows)).not.toContain('Vexillology');
    expect(await client.check()).toEqual([]);
  });

  it('begins once, however many changes call for it at the same time', async () => {
    const additions = Array.from({ length: 12 }, (_, n) =>
      client.send(staff, 'POST', `/${id}/sections/people/additions`, {
        people: [{ id: `p${n}`, outcome: told('died') }],
      }),
    );
    expect((await Promise.all(additions)).map(({ status }) => status)).toEqual(Array(12).fill(200));
    expect((await holds()).holds).toMatchObject([{ cause: 'death' }]);
    expect(started.filter(({ incidentId }) => incidentId === id)).toHaveLength(1);
  });

  it('is in the log, which proves itself in the end', async () => {
    await post(manager, '/holds', { reason: 'Press.' });
    expect(await client.check()).toEqual([]);
    await desk.plainSql(
      `UPDATE incident_section SET document = '{}' WHERE section = 'holds' AND incident_id = '${id}'`,
    );
    expect(await client.faults()).toContain('section-changed');
  });
});
