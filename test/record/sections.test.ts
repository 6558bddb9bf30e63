import { expect, it } from 'vitest';
import { describeEngines } from '../support/databases.js';
import { DOCK_PHONE, person, RECORD } from './record-app.js';
import { Client } from './record-desk.js';

const staff = person('staff', 'Ann');
const manager = person('manager', 'Max');
const known = <T>(value: T) => ({ value, known: 'told', by: 'renter' });

describeEngines('a section', RECORD, (desk) => {
  const client = new Client(desk);

  it('is version 0 until it is written, and is written on the version that was seen', async () => {
    const id = await client.opened(staff);
    const path = `/${id}/sections/people`;
    const before = await client.get(staff, path);
    expect(before).toMatchObject({
      status: 200,
      headers: { etag: '"0"' },
      body: { document: {}, finished: false },
    });
    const mine = { people: [{ id: 'p1', name: 'Ann Diver' }] };
    const theirs = { people: [{ id: 'p1', name: 'Bo Diver' }] };
    expect((await client.send(staff, 'PUT', path, { document: mine })).status).toBe(428);
    expect(await client.write(staff, path, { document: mine }, 0)).toMatchObject({
      status: 200,
      headers: { etag: '"1"' },
      body: { finished: true, document: mine },
    });
    expect(await client.write(manager, path, { document: theirs }, 0)).toMatchObject({
      status: 412,
      body: { current: { version: 1, document: mine }, yours: { document: theirs } },
    });
    const device = await client.write(DOCK_PHONE, path, { document: theirs }, 0);
    expect(device).toMatchObject({ status: 412, body: { current: { version: 1 } } });
    expect(JSON.stringify(device.body['current'])).not.toContain('Ann');
  });

  it('says every fault by pointer', async () => {
    const id = await client.opened(staff);
    const document = { people: [{ id: 'p1', outcome: { value: 'hurt', known: 'saw' }, shoe: 9 }] };
    const { status, body } = await client.write(staff, `/${id}/sections/people`, { document }, 0);
    expect(status).toBe(422);
    expect((body['errors'] as { pointer: string }[]).map(({ pointer }) => pointer)).toEqual([
      '/document/people/0/outcome/value',
      '/document/people/0/shoe',
    ]);
  });

  it("once finished is altered with a reason; adding needs none, and neither does one's own running call", async () => {
    const id = await client.opened(staff, { said: 'help' });
    const call = `/${id}/sections/call`;
    expect((await client.write(manager, call, { document: { said: 'help me' } }, 1)).status).toBe(422);
    expect((await client.write(staff, call, { document: { said: 'help us' } }, 1)).status).toBe(200);
    const added = { said: 'help us', takenBy: 'Ann' };
    expect((await client.write(manager, call, { document: added }, 2)).status).toBe(200);
    const altered = { ...added, said: 'help them' };
    expect(await client.write(staff, call, { document: altered }, 3)).toMatchObject({
      status: 422,
      body: { errors: [{ pointer: '/reason' }] },
    });
    const reason = 'Heard again on the recording.';
    expect((await client.write(staff, call, { document: altered, reason }, 3)).status).toBe(200);
    const { body } = await client.get(staff, `/${id}/amendments?section=call&limit=2`);
    expect(body['items']).toMatchObject([
      {
        who: 'account-Ann',
        person: 'Ann',
        reason,
        changes: [{ path: '/said', from: 'help us', to: 'help them' }],
      },
      { who: 'account-Max', reason: null, changes: [{ path: '/takenBy', from: null, to: 'Ann' }] },
    ]);
    const older = await client.get(
      staff,
      `/${id}/amendments?section=call&limit=2&after=${String(body['next'])}`,
    );
    expect(older.body).toMatchObject({ items: [{ finished: true }, { finished: false }], next: null });
  });

  it('tells the history of one field, and of no field with a name like it', async () => {
    const id = await client.opened(staff);
    const path = `/${id}/sections/people`;
    const people = (name: string, other: string) => ({
      document: {
        people: [
          { id: 'p1', name },
          { id: 'P1', name: other },
          { id: 'p_1', name: other },
        ],
      },
      reason: 'She spelled it.',
    });
    await client.write(staff, path, people('Ann', 'Bo'), 0);
    await client.write(staff, path, people('Ann', 'Bob'), 1);
    await client.write(staff, path, people('Anne', 'Bob'), 2);
    const history = async (pointer: string, section = '&section=people') =>
      client.get(staff, `/${id}/amendments?pointer=${encodeURIComponent(pointer)}${section}`);
    for (const pointer of ['/people/p1/name', '/people/p1']) {
      const { body } = await history(pointer);
      const changes = (body['items'] as { changes: { path: string }[] }[]).map((item) => item.changes);
      expect(changes.at(0)).toMatchObject([{ path: '/people/p1/name', from: 'Ann', to: 'Anne' }]);
      expect(changes.flat().filter(({ path }) => path === '/people/p1/name')).toHaveLength(2);
      expect(changes.flat().every(({ path }) => path.startsWith('/people/p1/'))).toBe(true);
    }
    expect((await history('/people/p_1/name')).body['items']).toHaveLength(2);
    expect((await history('/people/p9')).body['items']).toEqual([]);
    expect((await history('/people/p1', '')).status).toBe(422);
    expect((await history('people')).status).toBe(422);
  });

  it('written again with the same words stays as it is', async () => {
    const id = await client.opened(staff);
    const path = `/${id}/sections/account`;
    const document = { whatHappened: known('Hit the dock.') };
    await client.write(staff, path, { document }, 0);
    expect((await client.write(manager, path, { document }, 1)).headers['etag']).toBe('"1"');
  });

  it('keeps a statement as it was given, and takes an addendum', async () => {
    const id = await client.opened(staff);
    const path = `/${id}/sections/statements`;
    const one = { id: 's1', words: 'I looked left.' };
    await client.write(staff, path, { document: { statements: [one] } }, 0);
    const changed = { document: { statements: [{ ...one, words: 'I looked.' }] }, reason: 'She says so.' };
    expect(await client.write(staff, path, changed, 1)).toMatchObject({
      status: 422,
      body: { errors: [{ pointer: '/document/statements/0/words' }] },
    });
    const addenda = [{ id: 'a1', words: 'I looked right too.' }];
    const document = { statements: [{ ...one, addenda }] };
    expect((await client.write(staff, path, { document }, 1)).status).toBe(200);
  });

  it('is added to from a phone that cannot read it, in any order and more than once', async () => {
    const id = await client.opened(DOCK_PHONE);
    const add = (entry: object) =>
      client.send(DOCK_PHONE, 'POST', `/${id}/sections/timeline/additions`, { entries: [entry] });
    const one = { id: 'e1', what: 'Crew left the dock.' };
    expect((await add(one)).body).toEqual({ section: 'timeline', version: 1, finished: false });
    expect((await add({ id: 'e2', what: 'On scene.' })).body['version']).toBe(2);
    expect((await add(one)).body['version']).toBe(2);
    expect(await add({ id: 'e1', what: 'Crew never left.' })).toMatchObject({
      status: 409,
      body: { errors: [{ pointer: '/entries/0/what' }] },
    });
    expect((await client.get(DOCK_PHONE, `/${id}/sections/timeline`)).status).toBe(403);
    expect((await client.get(staff, `/${id}/sections/timeline`)).body['document']).toMatchObject({
      entries: [{ id: 'e1' }, { id: 'e2' }],
    });
  });

  it("drafts are each writer's own, no amendment, and gone when the section is finished", async () => {
    const id = await client.opened(staff);
    const draft = { document: { people: [{ nam: 'half' }] }, version: 0 };
    expect((await client.send(staff, 'PUT', `/${id}/drafts/people`, draft)).status).toBe(200);
    expect((await client.get(staff, `/${id}/drafts`)).body).toMatchObject([{ section: 'people', ...draft }]);
    expect((await client.get(manager, `/${id}/drafts`)).body).toEqual([]);
    expect((await client.get(staff, `/${id}`)).body['version']).toBe(2);
    const secret = { document: { x: '219-09-9999' } };
    expect((await client.send(staff, 'PUT', `/${id}/drafts/people`, secret)).status).toBe(422);
    await client.write(staff, `/${id}/sections/people`, { document: { people: [{ id: 'p1' }] } }, 0);
    expect((await client.get(staff, `/${id}/drafts`)).body).toEqual([]);
  });
});
