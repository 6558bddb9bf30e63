import { expect, it } from 'vitest';
import { describeEngines } from '../support/databases.js';
import { person, RECORD } from './record-app.js';
import { Client } from './record-desk.js';

const staff = person('staff', 'Ann');
const manager = person('manager', 'Max');

const SECRET = '1990-05-17';
const birthDate = { value: SECRET, known: 'told', by: 'renter' };

describeEngines('a withdrawal', RECORD, (desk) => {
  const client = new Client(desk);

  /** Every text of every table, as someone with the password reads it. */
  async function everything(): Promise<string> {
    const tables = ['incident', 'incident_section', 'amendment', 'section_draft', 'create_once'];
    const rows = await Promise.all(tables.map((table) => desk.plainSql(`SELECT * FROM ${table}`)));
    return JSON.stringify(rows);
  }

  it('takes the content out of section, amendments, search and drafts, and leaves reason and proof', async () => {
    const id = await client.opened(staff);
    const people = `/${id}/sections/people`;
    const first = { people: [{ id: 'p1', name: 'Zacharias', birthDate }, { id: 'p2' }] };
    await client.write(staff, people, { document: first }, 0);
    const corrected = { people: [{ ...first.people[0], name: 'Zachary' }, { id: 'p2' }] };
    await client.write(staff, people, { document: corrected, reason: 'As on the card.' }, 1);
    await client.send(manager, 'PUT', `/${id}/drafts/people`, { document: { ...corrected, draft: 'stays' } });
    expect(await everything()).toContain(SECRET);

    const withdrawal = { path: '/people/p1/birthDate', reason: 'Of another person.' };
    expect((await client.send(staff, 'POST', `${people}/withdrawals`, withdrawal)).status).toBe(403);
    const answer = await client.send(manager, 'POST', `${people}/withdrawals`, withdrawal);
    expect(answer).toMatchObject({
      status: 200,
      headers: { etag: '"3"' },
      body: { document: { people: [{ id: 'p1', name: 'Zachary' }, { id: 'p2' }] } },
    });
    expect(await everything()).not.toContain(SECRET);
    expect((await client.get(manager, `/${id}/drafts`)).body).toMatchObject([
      { document: { draft: 'stays' } },
    ]);

    const { body } = await client.get(staff, `/${id}/amendments?section=people`);
    expect(body['items']).toMatchObject([
      {
        person: 'Max',
        reason: 'Of another person.',
        withdraws: ['/people/p1/birthDate'],
        changes: [{ path: '/people/p1/birthDate', from: null, to: null, withdrawn: true }],
      },
      { changes: [{ path: '/people/p1/name', from: 'Zacharias', to: 'Zachary' }] },
      {},
    ]);
    expect(await client.check()).toEqual([]);
  });

  it('of a whole person takes every field that was ever written of them, also one changed since', async () => {
    const id = await client.opened(staff);
    const people = `/${id}/sections/people`;
    const document = {
      people: [
        { id: 'p1', name: 'Quentin', phone: '580-555-0177' },
        { id: 'p2', name: 'Bo' },
      ],
    };
    await client.write(staff, people, { document }, 0);
    const gone = {
      people: [
        { id: 'p1', name: 'Quentin' },
        { id: 'p2', name: 'Bo' },
      ],
    };
    await client.write(staff, people, { document: gone, reason: 'Wrong number.' }, 1);
    const withdrawal = { path: '/people/p1', reason: 'Was not there.' };
    const { body } = await client.send(manager, 'POST', `${people}/withdrawals`, withdrawal);
    expect(body['document']).toEqual({ people: [{ id: 'p2', name: 'Bo' }] });
    expect(await everything()).not.toMatch(/Quentin|quentin|580-555-0177/);
    expect((await client.get(staff, '?q=quentin')).body['items']).toEqual([]);
    const { madeAt } =
      ((await client.get(staff, `/${id}/amendments`)).body['items'] as { madeAt: string }[])[1] ?? {};
    const then = await client.get(staff, `/${id}/record?at=${String(madeAt)}`);
    const sections = then.body['sections'] as { section: string; withdrawn: string[] }[];
    expect(sections.find(({ section }) => section === 'people')?.withdrawn).toContain('/people/p1/name');
    expect(await client.check()).toEqual([]);
  });

  it.each([
    [{ path: '/people/p9', reason: 'x' }, '/path'],
    [{ path: '/people/p1/id', reason: 'x' }, '/path'],
    [{ path: 'people', reason: 'x' }, '/path'],
    [{ path: '/people/p1', reason: ' ' }, '/reason'],
    [{ path: '/people/p1' }, '/reason'],
  ])('%j is refused at %s', async (withdrawal, pointer) => {
    const id = await client.opened(staff);
    await client.write(staff, `/${id}/sections/people`, { document: { people: [{ id: 'p1' }] } }, 0);
    const answer = await client.send(manager, 'POST', `/${id}/sections/people/withdrawals`, withdrawal);
    expect(answer).toMatchObject({ status: 422, body: { errors: [{ pointer }] } });
  });

  it('takes out the words of a reason too, and leaves that there was one', async () => {
    const id = await client.opened(staff);
    const call = `/${id}/sections/call`;
    await client.write(
      staff,
      call,
      { document: { said: 'help', takenBy: 'Ann' }, reason: 'Vexillology.' },
      1,
    );
    const [{ sequence } = { sequence: 0 }] = (await client.get(staff, `/${id}/amendments?section=call`)).body[
      'items'
    ] as { sequence: number }[];
    const withdraw = (
      actor: typeof staff,
      of: number | string,
      body: object = { reason: 'Named a stranger.' },
    ) => client.send(actor, 'POST', `/${id}/amendments/${of}/withdrawals`, body);
    expect((await withdraw(staff, sequence)).status).toBe(403);
    for (const none of [sequence + 1, sequence - 1, 'x', '9'.repeat(30)])
      expect((await withdraw(manager, none)).status).toBe(404);
    expect((await withdraw(manager, sequence, { reason: 'x', counsel: 'Cleo Law' })).status).toBe(422);
    expect(await withdraw(manager, sequence)).toMatchObject({
      status: 200,
      body: { sequence, reasonWithdrawn: true },
    });
    expect((await withdraw(manager, sequence)).status).toBe(404);
    expect(await everything()).not.toContain('Vexillology');
    expect((await client.get(staff, `/${id}/amendments?section=call`)).body['items']).toMatchObject([
      { reason: 'Named a stranger.', withdraws: [`reason/${sequence}`], changes: [] },
      { sequence, reason: null, reasonWithdrawn: true },
      {},
    ]);
    expect(await client.check()).toEqual([]);
    const row = `sequence = ${sequence}`;
    const opening = `{"salt":"${'ab'.repeat(32)}","value":"Vexillology."}`;
    await desk.plainSql(`UPDATE amendment SET reason_opening = '${opening}' WHERE ${row}`);
    expect(await client.faults()).toContain('withdrawn-still-there');
    await desk.plainSql(`UPDATE amendment SET reason_opening = NULL WHERE ${row}`);
    expect(await client.check()).toEqual([]);
  });
});
