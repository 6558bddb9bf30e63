import { beforeAll, expect, it } from 'vitest';
import { type Browser, create, describeHouse, HOUR } from '../accounts/house.js';
import { bodyOf } from '../follow-up/desk.js';

interface Listed {
  unitName: string;
  standing: string;
  outing: { id: string; version: number; details: { phone?: string } } | null;
  notBack: string | null;
}

const RENTER = { renter: 'Dana Whitlock', phone: '580-555-0142', vehicle: 'Grey pickup' };

describeHouse('craft that go out and come back', (house) => {
  let staff: Browser;
  let manager: Browser;
  let device: Browser;

  beforeAll(async () => {
    manager = await house().signedIn('manager');
    staff = await house().signedIn('staff');
    device = (await house().device(await house().signedIn('administrator'))).browser;
    for (const unitName of ['PWC 7', 'PWC 8', 'PWC 9', 'Pontoon 1']) {
      await create(manager, '/api/craft', { unitName, type: 'personal-watercraft' }).expect(201);
    }
  });

  const inHours = (hours: number): string => new Date(Date.parse(house().now()) + hours * HOUR).toISOString();
  const listed = async (): Promise<Listed[]> =>
    bodyOf<{ items: Listed[] }>(await staff.get('/api/outings').expect(200)).items;
  const standings = async () => (await listed()).map(({ unitName, standing }) => [unitName, standing]);
  const back = (browser: Browser, unit: string, key?: string) =>
    create(browser, `/api/outings/units/${encodeURIComponent(unit)}/back`, {}, key);

  it('says of a craft that nobody wrote down that nothing is known', async () => {
    expect(new Set((await listed()).map(({ standing }) => standing))).toEqual(new Set(['not-known']));
  });

  it('lists what is late first, then what is out, and what is in last', async () => {
    const key = 'key-of-a-retry-0001';
    const sent = { unit: 'pwc 07', dueBackAt: inHours(1), ...RENTER };
    const first = bodyOf<{ id: string }>(await create(staff, '/api/outings', sent, key).expect(201));
    const again = bodyOf<{ id: string }>(await create(staff, '/api/outings', sent, key).expect(201));
    expect(again.id).toBe(first.id);
    await create(staff, '/api/outings', { unit: 'PWC 8', dueBackAt: inHours(3) }).expect(201);
    await create(staff, '/api/outings', { unit: 'PWC 9', dueBackAt: inHours(2) }).expect(201);
    house().letPass(2.5 * HOUR);
    await back(staff, 'PWC 9').expect(200);
    expect(await standings()).toEqual([
      ['PWC 7', 'late'],
      ['PWC 8', 'out'],
      ['Pontoon 1', 'not-known'],
      ['PWC 9', 'in'],
    ]);
  });

  it('refuses a second outing of a craft that is out, and an unknown craft at its field', async () => {
    await create(staff, '/api/outings', { unit: 'PWC 7', dueBackAt: inHours(1) }).expect(409);
    const refused = await create(staff, '/api/outings', { unit: 'PWC 77' }).expect(422);
    expect(refused.body).toMatchObject({ errors: [{ pointer: '/unit' }] });
  });

  it('corrects an outing on the version that was read, and keeps what it said before', async () => {
    const outing = (await listed()).find(({ unitName }) => unitName === 'PWC 8')?.outing;
    if (outing === null || outing === undefined) throw new Error('PWC 8 is not out');
    const change = (version: number) =>
      staff
        .put(`/api/outings/${outing.id}`)
        .set('If-Match', `"${version}"`)
        .send({ unit: 'PWC 8', dueBackAt: inHours(5) });
    await change(outing.version).expect(200);
    await change(outing.version).expect(412);
    const read = await staff.get(`/api/outings/${outing.id}`).expect(200);
    expect(bodyOf<{ events: { kind: string }[] }>(read).events.map(({ kind }) => kind)).toEqual([
      'went-out',
      'changed',
    ]);
  });

  it('lets a device mark back and undo, and tells it no name and no number', async () => {
    const answer = await back(device, 'PWC 7').expect(200);
    expect(JSON.stringify(answer.body)).not.toMatch(/Dana|0142|pickup/);
    await back(device, 'PWC 7').expect(409);
    expect(new Map((await standings()) as [string, string][]).get('PWC 7')).toBe('in');
    const { id } = bodyOf<{ id: string }>(answer);
    const undone = await create(device, `/api/outings/${id}/undoing`, { why: 'The other red one.' }).expect(
      200,
    );
    expect(JSON.stringify(undone.body)).not.toMatch(/Dana|0142|pickup/);
    expect(new Map((await standings()) as [string, string][]).get('PWC 7')).toBe('late');
    await device.get('/api/outings').expect(401);
    await device.get(`/api/outings/${id}`).expect(401);
  });

  it('takes a list over whole or not at all', async () => {
    const bad = 'Unit,Due back,Renter\nPontoon 1,23:59,Lee Marsh\nPWC 9,soon,Lee\nPWC 77,23:59,Lee\n';
    const refused = await create(staff, '/api/outing-lists', { csv: bad }).expect(422);
    expect(refused.body).toMatchObject({ errors: [{ pointer: '/rows/3/dueBackAt' }] });
    expect(JSON.stringify(refused.body)).not.toContain('Lee');
    const twice = 'Unit,Due back\nPontoon 1,23:59\npontoon 1,23:59\nPWC 8,23:59\nPWC 77,23:59';
    const named = await create(staff, '/api/outing-lists', { csv: twice }).expect(422);
    expect(bodyOf<{ errors: { pointer: string }[] }>(named).errors.map(({ pointer }) => pointer)).toEqual([
      '/rows/3/unit',
      '/rows/4/unit',
      '/rows/5/unit',
    ]);
    expect(new Map((await standings()) as [string, string][]).get('Pontoon 1')).toBe('not-known');
    const due = inHours(4);
    const good = { csv: `Craft;Due;Name\nPontoon 1;${due};Lee Marsh\nPWC 9;${due};Kim` };
    const taken = await create(staff, '/api/outing-lists', good, 'key-of-a-list-0001').expect(201);
    expect(taken.body).toMatchObject({ taken: 2, ignored: [] });
    const again = await create(staff, '/api/outing-lists', good, 'key-of-a-list-0001').expect(201);
    expect(again.body).toEqual(taken.body);
    expect((await standings()).slice(1).map(([, standing]) => standing)).toEqual(['out', 'out', 'out']);
  });
});
