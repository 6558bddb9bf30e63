import { randomUUID } from 'node:crypto';
import { beforeAll, expect, it } from 'vitest';
import { type Browser, create, describeHouse, HOUR, type Person } from '../accounts/house.js';
import { bodyOf } from '../follow-up/desk.js';

interface Count {
  id: string;
  version: number;
  unanswered: string[];
  closedBy: string | null;
  outcome: object | null;
}

describeHouse('the count at closing', (house) => {
  let ben: Person;
  let staff: Browser;
  let manager: Browser;
  let device: Browser;

  beforeAll(async () => {
    ben = await house().person('staff');
    staff = await house().signedIn(ben);
    manager = await house().signedIn('manager');
    device = (await house().device(await house().signedIn('administrator'))).browser;
    for (const unitName of ['PWC 7', 'PWC 8', 'PWC 9', 'PWC 10']) {
      await create(manager, '/api/craft', { unitName, type: 'personal-watercraft' }).expect(201);
    }
  });

  const begin = async (): Promise<string> =>
    bodyOf<Count>(await create(staff, '/api/closing-counts', {}).expect(201)).id;
  const read = async (id: string): Promise<Count> =>
    bodyOf(await staff.get(`/api/closing-counts/${id}`).expect(200));
  const answer = (id: string, unit: string, said: string, more: object = {}, browser = staff) =>
    create(browser, `/api/closing-counts/${id}/answers`, { unit, answer: said, ...more });
  const close = async (id: string, browser = staff) => {
    const { version } = await read(id);
    return browser.post(`/api/closing-counts/${id}/closing`).set('If-Match', `"${version}"`).send();
  };
  const outOn = (unit: string) =>
    create(staff, '/api/outings', { unit, dueBackAt: house().now() }).expect(201);

  it('refuses to close while a craft is unanswered, names each, and opens "not back" for what is out', async () => {
    await outOn('PWC 7');
    await outOn('PWC 8');
    const id = await begin();
    const again = await create(staff, '/api/closing-counts', {}).expect(409);
    expect(bodyOf<{ current: Count }>(again).current.id).toBe(id);
    await answer(id, 'PWC 7', 'in').expect(200);
    await answer(id, 'PWC 8', 'out', {}, device).expect(200);
    const refused = await close(id);
    expect(refused.status).toBe(409);
    expect(JSON.stringify(refused.body)).toMatch(/PWC 9.*PWC 10/);
    await answer(id, 'PWC 9', 'elsewhere').expect(422);
    await answer(id, 'PWC 9', 'elsewhere', { where: 'The shop' }).expect(200);
    await answer(id, 'PWC 10', 'in').expect(200);
    expect((await close(id, device)).status).toBe(401);
    const closed = await close(id);
    expect(closed.status).toBe(200);
    expect(closed.body).toMatchObject({
      closedBy: ben.name,
      unanswered: [],
      outcome: { opened: ['PWC 8'], markedBack: ['PWC 7'], stillToEnd: [] },
    });
    expect((await close(id)).status).toBe(409);
    await answer(id, 'PWC 10', 'out').expect(409);
    const lost = bodyOf<{ items: { unit: string; outing: object | null }[] }>(
      await staff.get('/api/not-back'),
    ).items;
    expect(lost).toMatchObject([{ unit: 'PWC 8' }]);
    const list = bodyOf<{ items: { unitName: string; standing: string }[] }>(
      await staff.get('/api/outings'),
    ).items;
    expect(list.map(({ unitName, standing }) => [unitName, standing])).toEqual([
      ['PWC 8', 'late'],
      ['PWC 9', 'not-known'],
      ['PWC 10', 'in'],
      ['PWC 7', 'in'],
    ]);
  });

  it('asks again for a craft that went out after it was counted in', async () => {
    const id = await begin();
    for (const unit of ['PWC 7', 'PWC 9', 'PWC 10']) await answer(id, unit, 'in').expect(200);
    await answer(id, 'PWC 8', 'out').expect(200);
    expect((await read(id)).unanswered).toEqual([]);
    house().letPass(1000);
    await outOn('PWC 9');
    expect((await read(id)).unanswered).toEqual(['PWC 9']);
    expect((await close(id)).status).toBe(409);
    await answer(id, 'PWC 9', 'out').expect(200);
    expect((await close(id)).body).toMatchObject({ outcome: { opened: ['PWC 9'], markedBack: [] } });
  });

  it('takes an answer that waited for signal at the moment at which somebody looked', async () => {
    const id = randomUUID();
    await create(device, '/api/closing-counts', { id }).expect(201);
    const looked = house().now();
    house().letPass(1000);
    await outOn('PWC 10');
    await answer(id, 'PWC 10', 'in', { at: looked }).expect(200);
    expect((await read(id)).unanswered).toContain('PWC 10');
    await answer(id, 'PWC 10', 'in', { at: new Date(Date.parse(house().now()) + HOUR).toISOString() }).expect(
      200,
    );
    expect((await read(id)).unanswered).not.toContain('PWC 10');
    for (const unit of ['PWC 7', 'PWC 8', 'PWC 9'])
      await answer(id, unit, unit === 'PWC 7' ? 'in' : 'out').expect(200);
    expect((await close(id)).body).toMatchObject({ outcome: { opened: [], markedBack: ['PWC 10'] } });
  });

  it('says which "not back" is still to be ended, and ends none by itself', async () => {
    const id = await begin();
    for (const unit of ['PWC 7', 'PWC 8', 'PWC 9', 'PWC 10']) await answer(id, unit, 'in').expect(200);
    expect((await close(id)).body).toMatchObject({ outcome: { stillToEnd: ['PWC 8', 'PWC 9'] } });
    expect(bodyOf<{ items: object[] }>(await staff.get('/api/not-back')).items).toHaveLength(2);
  });

  it('shows a craft as in that was counted out, never written down, and turned out to be late', async () => {
    const standing = async (): Promise<string | undefined> => {
      const list = bodyOf<{ items: { unitName: string; standing: string }[] }>(
        await staff.get('/api/outings'),
      );
      return list.items.find(({ unitName }) => unitName === 'PWC 10')?.standing;
    };
    const id = await begin();
    for (const unit of ['PWC 7', 'PWC 8', 'PWC 9']) await answer(id, unit, 'in').expect(200);
    await answer(id, 'PWC 10', 'out').expect(200);
    expect((await close(id)).body).toMatchObject({ outcome: { opened: ['PWC 10'] } });
    expect(await standing()).toBe('due-not-known');
    house().letPass(1000);
    const lost = bodyOf<{ items: { id: string; unit: string }[] }>(await staff.get('/api/not-back')).items;
    const search = lost.find(({ unit }) => unit === 'PWC 10')?.id ?? '';
    await create(staff, `/api/not-back/${search}/ending`, { ended: 'late' }).expect(200);
    expect(await standing()).toBe('in');
    await create(staff, `/api/not-back/${search}/ending/undoing`, { why: 'Another one.' }).expect(200);
    expect(await standing()).toBe('due-not-known');
    await create(staff, `/api/not-back/${search}/ending`, { ended: 'late' }).expect(200);
  });

  it('takes no signature for what was answered half a day ago', async () => {
    const id = await begin();
    for (const unit of ['PWC 7', 'PWC 8', 'PWC 9', 'PWC 10']) await answer(id, unit, 'in').expect(200);
    house().letPass(13 * HOUR);
    staff = await house().signedIn(ben);
    expect((await close(id)).status).toBe(409);
  });
});
