import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Browser, change, create, describeHouse, type Person } from './house.js';

interface Line {
  id: string;
  accountId: string;
  personName: string;
  outOfDate: { title: string; expiresOn: string }[];
}

describeHouse('the roster', (house) => {
  let manager: Browser;
  let staff: Browser;
  let ana: Person;
  beforeAll(async () => {
    ana = await house().person('staff');
    manager = await house().signedIn('manager');
    staff = await house().signedIn(ana);
  });
  const put = (different: object = {}, key?: string) =>
    create(
      manager,
      '/api/roster',
      { accountId: ana.id, duty: 'dock', from: '2026-06-13', to: '2026-06-14', ...different },
      key,
    );
  const certify = (different: object = {}) =>
    create(manager, '/api/certificates', { accountId: ana.id, title: 'First aid', ...different });
  const on = async (from: string, to = from): Promise<Line[]> => {
    const { items } = (await staff.get(`/api/roster?from=${from}&to=${to}`).expect(200)).body as {
      items: Line[];
    };
    return items.filter(({ accountId }) => accountId === ana.id);
  };

  it('says who is on, on each of the days and on no other', async () => {
    const { id } = (await put({ duty: 'shift-lead' }).expect(201)).body as Line;
    for (const [from, to, expected] of [
      ['2026-06-12', '2026-06-12', 0],
      ['2026-06-13', '2026-06-13', 1],
      ['2026-06-14', '2026-06-20', 1],
      ['2026-06-01', '2026-06-30', 1],
      ['2026-06-15', '2026-06-20', 0],
    ] as const) {
      expect(await on(from, to)).toHaveLength(expected);
    }
    expect(await on('2026-06-13')).toEqual([
      {
        id,
        accountId: ana.id,
        personName: ana.name,
        duty: 'shift-lead',
        from: '2026-06-13',
        to: '2026-06-14',
        version: 1,
        outOfDate: [],
      },
    ]);
  });

  it('takes a retry as the same entry', async () => {
    const key = randomUUID();
    const [first, again] = [
      await put({ from: '2026-07-01', to: '2026-07-01' }, key),
      await put({ from: '2026-07-01', to: '2026-07-01' }, key),
    ];
    expect(again.body).toEqual(first.body);
    expect(await on('2026-07-01')).toHaveLength(1);
  });

  it.each([
    [{ duty: 'captain' }, '/duty'],
    [{ from: '2026-02-30' }, '/from'],
    [{ to: '2026-06-12' }, '/to'],
    [{ accountId: randomUUID() }, '/accountId'],
    [{ accountId: 'ana' }, '/accountId'],
    [{ note: 'late' }, '/note'],
  ])('refuses %j', async (different, pointer) => {
    const answer = await put(different).expect(422);
    expect(answer.body).toMatchObject({ errors: [{ pointer }] });
  });

  it('is changed and shortened in the version that was read', async () => {
    const { id } = (await put({ from: '2026-08-01', to: '2026-08-31' })).body as Line;
    const shorter = await change(manager, `/api/roster/${id}`, 1, { to: '2026-08-15' }).expect(200);
    expect(shorter.body).toMatchObject({ to: '2026-08-15', version: 2 });
    await change(manager, `/api/roster/${id}`, 1, { duty: 'office' }).expect(412);
    const backwards = await change(manager, `/api/roster/${id}`, 2, { from: '2026-08-20' }).expect(422);
    expect(backwards.body).toMatchObject({ errors: [{ pointer: '/from' }] });
    await manager.delete(`/api/roster/${id}`).expect(428);
    await manager.delete(`/api/roster/${id}`).set('If-Match', '"2"').expect(204);
    expect(await on('2026-08-01')).toEqual([]);
    await change(manager, `/api/roster/${id}`, 3, { duty: 'office' }).expect(404);
    const rows = await house().plainSql(`SELECT duty, last_day FROM roster_entry WHERE id = '${id}'`);
    expect(rows).toEqual([{ duty: 'dock', last_day: '2026-08-15' }]);
  });

  it('asks for days in their order', async () => {
    await staff.get('/api/roster?from=2026-06-14&to=2026-06-13').expect(422);
    await staff.get('/api/roster').expect(422);
  });

  describe('with certificates', () => {
    it('warns of those that are out of date on the day', async () => {
      await put({ from: '2026-09-01', to: '2026-09-30' });
      await certify({ title: 'First aid', expiresOn: '2026-09-10' }).expect(201);
      await certify({ title: 'Rescue craft', expiresOn: null }).expect(201);
      expect((await on('2026-09-10'))[0]?.outOfDate).toEqual([]);
      const late = [{ title: 'First aid', expiresOn: '2026-09-10' }];
      expect((await on('2026-09-11'))[0]?.outOfDate).toEqual(late);
      expect((await on('2026-09-01', '2026-09-30'))[0]?.outOfDate).toEqual(late);
    });

    it('lists them with how they stand, what ends first before the rest', async () => {
      const list: { title: string; standing: string }[] = [];
      for (let after = ''; ;) {
        const answer = await staff.get(`/api/certificates?day=2026-08-20&limit=1${after}`).expect(200);
        const { items, next } = answer.body as { items: typeof list; next: string | null };
        list.push(...items);
        if (next === null) break;
        after = `&after=${next}`;
      }
      expect(list.map(({ title, standing }) => [title, standing])).toEqual([
        ['First aid', 'ends-soon'],
        ['Rescue craft', 'no-end'],
      ]);
    });

    it('changes them, keeps what was not sent, and lets nothing end before it began', async () => {
      const made = (await certify({ title: 'Boating card', number: 'B-1', issuedOn: '2026-05-01' }))
        .body as Line;
      const changed = await change(manager, `/api/certificates/${made.id}`, 1, { expiresOn: '2027-05-01' });
      expect(changed.body).toEqual({ ...made, expiresOn: '2027-05-01', version: 2 });
      const early = await change(manager, `/api/certificates/${made.id}`, 2, { expiresOn: '2026-04-30' });
      expect([early.status, early.body]).toMatchObject([422, { errors: [{ pointer: '/expiresOn' }] }]);
      await manager.delete(`/api/certificates/${made.id}`).set('If-Match', '"2"').expect(204);
      const { items } = (await staff.get('/api/certificates?day=2026-08-20')).body as { items: Line[] };
      expect(items.map(({ id }) => id)).not.toContain(made.id);
    });

    it('shows neither certificates nor entries of somebody whose account is closed', async () => {
      const gone = await house().person('staff');
      await put({ accountId: gone.id, from: '2026-10-01', to: '2026-10-01' }).expect(201);
      await certify({ accountId: gone.id, title: 'Diver' }).expect(201);
      const administrator = await house().signedIn('administrator');
      await change(administrator, `/api/accounts/${gone.id}`, 1, { active: false }).expect(200);
      const roster = await staff.get('/api/roster?from=2026-10-01&to=2026-10-01');
      const certificates = await staff.get('/api/certificates?day=2026-10-01&limit=100');
      expect(roster.body).toEqual({ items: [] });
      expect(JSON.stringify(certificates.body)).not.toContain('Diver');
      const refused = await put({ accountId: gone.id }).expect(422);
      expect(refused.body).toMatchObject({ errors: [{ pointer: '/accountId' }] });
    });
  });
});
