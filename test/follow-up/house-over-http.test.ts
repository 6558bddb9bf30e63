import { beforeAll, expect, it } from 'vitest';
import { type Browser, create, describeHouse, type Person } from '../accounts/house.js';
import { bodyOf, openIncident, peopleOf, UNHURT, write } from './desk.js';

interface Clock {
  id: string;
  startsAt: string | null;
  endsAt: string | null;
}

describeHouse('claims, closing, hand-overs and house rules', (house) => {
  let ana: Person;
  let manager: Browser;
  let staff: Browser;
  let administrator: Browser;
  let incident: { id: string; reference: string };

  beforeAll(async () => {
    ana = await house().person('manager');
    manager = await house().signedIn(ana);
    staff = await house().signedIn('staff');
    administrator = await house().signedIn('administrator');
    await create(manager, '/api/craft', { unitName: 'PWC 7', type: 'personal-watercraft' }).expect(201);
    incident = await openIncident(staff, house().now());
    await write(staff, incident.id, 'people', peopleOf(UNHURT));
  });

  const at = (path: string): string => `/api/incidents/${incident.id}/${path}`;
  const demand = (id: string, when: string, answer = 'yes') => ({
    id,
    party: 'renter',
    direction: 'in',
    at: { at: when, how: 'entered' },
    writtenDemand: { value: answer, known: 'saw' },
  });
  const limitation = async (): Promise<Clock | undefined> =>
    bodyOf<{ items: Clock[] }>(await staff.get(at('claims-clocks')).expect(200)).items.find(
      ({ id }) => id === 'limitation-action',
    );

  it('runs six months from the first written notice of a claim, and never from a later one (46 U.S.C. 30529)', async () => {
    expect(await limitation()).toMatchObject({ startsAt: null, endsAt: null });
    await write(staff, incident.id, 'contacts', { contacts: [demand('k2', '2026-08-31T12:00:00-05:00')] });
    expect((await limitation())?.endsAt).toBe('2027-02-28T12:00:00-06:00');
    await write(staff, incident.id, 'contacts', {
      contacts: [demand('k2', '2026-08-31T12:00:00-05:00'), demand('k1', '2026-07-03T10:00:00-05:00')],
    });
    expect((await limitation())?.endsAt).toBe('2027-01-03T10:00:00-06:00');
    await write(staff, incident.id, 'contacts', {
      contacts: [demand('k2', '2026-08-31T12:00:00-05:00'), demand('k1', '2026-07-03T10:00:00-05:00', 'no')],
    });
    expect((await limitation())?.endsAt).toBe('2027-01-03T10:00:00-06:00');
  });

  it('says what speaks against closing, and stops nobody', async () => {
    const warnings = bodyOf<{ items: { kind: string }[] }>(
      await manager.get(at('closing')).expect(200),
    ).items;
    expect(new Set(warnings.map(({ kind }) => kind))).toEqual(
      new Set(['duty-open', 'task-open', 'craft-held', 'claims-clock-runs']),
    );
  });

  it('hands over craft that are kept in without an open incident, with their stations', async () => {
    const station = { name: 'North dock', timeZone: 'America/Chicago' };
    const { id: stationId } = bodyOf<{ id: string }>(
      await create(manager, '/api/stations', station).expect(201),
    );
    const craft = { unitName: 'PWC 12', type: 'personal-watercraft', stationId };
    const { id: craftId } = bodyOf<{ id: string }>(await create(manager, '/api/craft', craft).expect(201));
    const step = { kind: 'do-not-start', reason: 'Water in the engine' };
    await create(staff, `/api/craft/${craftId}/service-steps`, step).expect(201);
    const built = bodyOf<{ summary: { craftHeld: object[] } }>(
      await create(manager, '/api/shift-hand-overs', {}).expect(201),
    );
    expect(built.summary.craftHeld).toContainEqual({
      craftId,
      name: 'PWC 12',
      station: 'North dock',
      why: ['Do not start the engine: Water in the engine'],
    });
  });

  it('hands over a craft that is looked for', async () => {
    const lost = bodyOf<{ id: string }>(await create(staff, '/api/not-back', { unit: 'PWC 12' }).expect(201));
    const built = bodyOf<{ summary: { notBack: object[] } }>(
      await create(manager, '/api/shift-hand-overs', {}).expect(201),
    );
    expect(built.summary.notBack).toMatchObject([{ notBackId: lost.id, unit: 'PWC 12', ended: null }]);
  });

  it('builds a hand-over of what is open, and has two different people sign it in their order', async () => {
    const built = await create(manager, '/api/shift-hand-overs', { remarks: 'Wind at six.' }).expect(201);
    const { id } = bodyOf<{ id: string }>(built);
    expect(built.body).toMatchObject({
      remarks: 'Wind at six.',
      summary: {
        openCalls: [{ reference: incident.reference }],
        craftHeld: [{ name: 'PWC 7' }, { name: 'PWC 12' }],
      },
    });
    const sign = (who: Browser, side: string, version: number) =>
      who.post(`/api/shift-hand-overs/${id}/signatures`).set('If-Match', `"${version}"`).send({ side });
    await sign(staff, 'incoming', 1).expect(409);
    const signed = await sign(manager, 'outgoing', 1).expect(200);
    expect(signed.body).toMatchObject({ outgoingName: ana.name, incomingName: null, version: 2 });
    await sign(manager, 'incoming', 2).expect(409);
    await sign(staff, 'incoming', 1).expect(412);
    await sign(staff, 'incoming', 2).expect(200);
    const page = await staff.get('/api/shift-hand-overs').expect(200);
    expect(page.body).toMatchObject({
      items: [{ id, version: 3 }, { version: 1 }, { version: 1 }],
      next: null,
    });
    await staff.get('/api/shift-hand-overs/nowhere').expect(404);
  });

  it('compares nothing before the owner has adopted dated written rules, and keeps nothing of it', async () => {
    const before = await manager.get(at('house-rule-observations')).expect(200);
    expect(before.body).toEqual({ rules: null, items: [] });
    const offered = await staff.get('/api/house-rules').expect(200);
    expect(offered.body).toMatchObject({ adopted: [], inForce: null });

    const rules = { adoptedOn: '2020-05-01', document: 'Dock rules', rules: [{ id: 'life-jacket-always' }] };
    await create(manager, '/api/house-rules', rules).expect(403);
    await create(administrator, '/api/house-rules', { ...rules, rules: [{ id: 'least-depth' }] }).expect(422);
    const later = { ...rules, adoptedOn: '2099-01-01', rules: [] };
    await create(administrator, '/api/house-rules', later).expect(201);
    const adopted = await create(administrator, '/api/house-rules', rules).expect(201);

    const amended = async () => bodyOf<{ latestAmendment: number }>(await staff.get(at('').slice(0, -1)));
    const was = (await amended()).latestAmendment;
    const after = await manager.get(at('house-rule-observations')).expect(200);
    expect(after.body).toMatchObject({
      rules: { document: 'Dock rules' },
      items: [{ rule: 'life-jacket-always', stands: 'not-known' }],
    });
    expect((await amended()).latestAmendment).toBe(was);
    await staff.get(at('house-rule-observations')).expect(403);
    const inForce = await staff.get('/api/house-rules').expect(200);
    expect(inForce.body).toMatchObject({ inForce: bodyOf<{ id: string }>(adopted).id });
  });

  it('keeps where everybody wants to be told, for themselves', async () => {
    const put = (who: Browser, body: object) => who.put('/api/notice-address').send(body);
    await put(staff, { mail: 'sam@example.com', phone: '580-555-0123' }).expect(200);
    await put(staff, { mail: 'not a mail address' }).expect(422);
    const read = async (who: Browser): Promise<object> =>
      bodyOf<object>(await who.get('/api/notice-address').expect(200));
    expect(await read(staff)).toEqual({ mail: 'sam@example.com', phone: '580-555-0123' });
    expect(await read(manager)).toEqual({ mail: null, phone: null });
    await put(staff, { phone: '580-555-0124' }).expect(200);
    expect(await read(staff)).toEqual({ mail: null, phone: '580-555-0124' });
  });
});
