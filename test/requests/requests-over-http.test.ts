import { beforeAll, expect, it } from 'vitest';
import type { RequestsSection } from '../../shared/record/legal-request.js';
import { UnitOfWork } from '../../src/server/platform/database/unit-of-work.js';
import { DeletionStops, RecordSettings, ServiceSections } from '../../src/server/record/record.api.js';
import { verifyRecord } from '../../src/server/record/verify-record.js';
import { type Browser, create, DAY, describeHouse } from '../accounts/house.js';
import { bodyOf, eventsOf, openIncident, taskOf, tasksOf } from '../follow-up/desk.js';
import { draftFor, makePacket } from '../hand-over/packet-desk.js';
import { letter, logRequest, readRequest, type Request, step } from './request-desk.js';

interface Holds {
  held: boolean;
  holds: { id: string; cause: string; of: string[]; reason: string }[];
}

describeHouse('requests', (house) => {
  let manager: Browser;
  let staff: Browser;
  let incident: string;
  let reference: string;
  beforeAll(async () => {
    manager = await house().signedIn('manager');
    staff = await house().signedIn('staff');
    const opened = await openIncident(manager, house().now());
    [incident, reference] = [opened.id, opened.reference];
  });
  const faults = async () => {
    const { headsFile } = house().app.get(RecordSettings, { strict: false });
    return (await verifyRecord(house().app.get(UnitOfWork), headsFile)).faults;
  };
  /** What the record of an incident says, now or as of a moment. */
  const entriesOf = async (id: string, at?: string) => {
    const sections = house().app.get(ServiceSections, { strict: false });
    return (await sections.read<RequestsSection>(id, 'requests', at)).requests ?? [];
  };
  const log = (more: object = {}) => logRequest(manager, letter(house().now(), more));
  const fresh = async (): Promise<string> => (await openIncident(manager, house().now())).id;
  const holdsOf = async (id: string) => bodyOf<Holds>(await manager.get(`/api/incidents/${id}/holds`));
  const later = (days: number): string => new Date(Date.parse(house().now()) + days * DAY).toISOString();

  it('are logged once for a key, numbered, and stand in the record of the incident', async () => {
    const body = letter(house().now(), { incidents: [{ id: incident }] });
    const first = await logRequest(manager, body, 'key-of-a-request-1');
    const again = await logRequest(manager, body, 'key-of-a-request-1');
    expect(again).toEqual(first);
    expect(first.number).toMatch(/^R-20\d\d-\d{4}$/);
    expect(first.incidents).toMatchObject([{ incident, reference, held: true }]);
    expect(await entriesOf(incident)).toMatchObject([
      { id: first.id, number: first.number, from: 'N. Amparo' },
    ]);
    expect(await entriesOf(incident, '2020-01-01T00:00:00Z')).toEqual([]);
    expect(await faults()).toEqual([]);
  });

  it.each(['subpoena', 'court-order', 'preservation-letter'])('of the kind %s begin a hold', async (kind) => {
    const id = await fresh();
    const { number, ...request } = await log({ kind, incidents: [{ id }] });
    const { holds } = await holdsOf(id);
    expect(holds).toMatchObject([{ id: request.incidents[0]?.hold, cause: 'request', of: [request.id] }]);
    expect(holds[0]?.reason).toContain(number);
    expect(holds[0]?.reason).not.toContain('Amparo');
  });

  it('begin no hold where a person says why not, and then one where a person says so', async () => {
    const id = await fresh();
    await create(
      manager,
      '/api/requests',
      letter(house().now(), { incidents: [{ id, hold: false }] }),
    ).expect(422);
    const why = { id, hold: false, reason: 'It names another day.' };
    const request = await log({ incidents: [why] });
    expect(request.incidents).toMatchObject([{ held: false, notHeld: why.reason }]);
    const after = bodyOf<Request>(await step(manager, request, 'incidents', { id, hold: true }).expect(200));
    expect(after.incidents).toHaveLength(1);
    expect(after.incidents[0]?.held).toBe(true);
    const asked = await log({ kind: 'insurer-request', incidents: [{ id: await fresh(), hold: true }] });
    expect(asked.incidents[0]?.held).toBe(true);
  });

  it('take an incident in later, and their hold outlives being closed and taken out', async () => {
    const id = await fresh();
    const request = await log();
    expect(request.cautions.map(({ key }) => key)).toContain('scope');
    const added = bodyOf<Request>(await step(manager, request, 'incidents', { id }).expect(200));
    expect(added.incidents).toMatchObject([{ incident: id, held: true }]);
    await step(manager, request, 'incidents', { id }).expect(412);
    const reason = 'It is about another lake.';
    const removed = bodyOf<Request>(
      await step(manager, added, `incidents/${id}/removal`, { reason }).expect(200),
    );
    expect(removed.incidents).toMatchObject([{ incident: id, ended: { reason } }]);
    expect((await holdsOf(id)).held).toBe(true);
    const open = (await tasksOf(manager, id)).filter(({ key }) => key.endsWith(request.id));
    expect(open.map(({ state }) => state)).toEqual(['superseded', 'superseded']);
    const back = bodyOf<Request>(await step(manager, removed, 'incidents', { id }).expect(200));
    const status = { status: 'answered', reason: 'Counsel wrote back.' };
    await step(manager, back, 'status', status).expect(200);
    expect((await holdsOf(id)).held).toBe(true);
    expect(await faults()).toEqual([]);
  });

  it('are never due at a time that nobody stated, and overdue after one that somebody did', async () => {
    expect(await log()).toMatchObject({ dueInstant: null, overdue: false });
    const undated = letter(house().now(), { due: 'day' });
    const refused = await create(manager, '/api/requests', undated).expect(422);
    expect(bodyOf<{ errors: { pointer: string }[] }>(refused).errors.map(({ pointer }) => pointer)).toEqual([
      '/dueDay',
      '/dueBasis',
    ]);
    const id = await fresh();
    const dueAt = later(2);
    const request = await log({ due: 'at', dueAt, dueBasis: 'stated', incidents: [{ id }] });
    expect(request).toMatchObject({ dueInstant: dueAt, overdue: false });
    const task = await taskOf(manager, id, `answer-request:${request.id}`);
    expect(task).toMatchObject({
      dueAt,
      state: 'open',
      title: `Answer the preservation letter ${request.number}`,
    });
    const all = bodyOf<{ items: { key: string }[] }>(await manager.get('/api/tasks?due=day&limit=100'));
    expect(all.items.map(({ key }) => key)).not.toContain(task.key);
    const moved = letter(house().now(), {
      due: 'at',
      dueAt: later(0),
      dueBasis: 'agreed',
      reason: 'They called.',
    });
    await manager.put(`/api/requests/${request.id}`).set('If-Match', '"1"').send(moved).expect(200);
    const soon = bodyOf<{ items: { key: string }[] }>(await manager.get('/api/tasks?due=day&limit=100'));
    expect(soon.items.map(({ key }) => key)).toContain(task.key);
    expect(await readRequest(manager, request)).toMatchObject({ overdue: true });
    const { items } = bodyOf<{
      items: { version: number; what: string; reason: string | null; details: object }[];
    }>(await manager.get(`/api/requests/${request.id}/versions`).expect(200));
    expect(items).toMatchObject([
      { version: 2, what: 'corrected', reason: 'They called.', details: { dueBasis: 'agreed' } },
      { version: 1, what: 'logged', reason: null, details: { dueAt, dueBasis: 'stated' } },
    ]);
  });

  it('have their work done by what the log says, and due again when they are opened again', async () => {
    const id = await fresh();
    const subpoena = { kind: 'subpoena', court: 'federal', incidents: [{ id }] };
    const request = await log(subpoena);
    expect(request.objectionsBy).not.toBeNull();
    const objection = {
      at: house().now(),
      to: 'N. Amparo',
      way: 'by counsel',
      what: 'Other days are not asked.',
    };
    await create(manager, `/api/requests/${request.id}/objections`, objection).expect(200);
    const seen = letter(house().now(), {
      ...subpoena,
      incidents: undefined,
      counsel: 'Cleo Law',
      counselSawAt: house().now(),
      reason: 'She read it.',
    });
    const put = await manager
      .put(`/api/requests/${request.id}`)
      .set('If-Match', '"2"')
      .send(seen)
      .expect(200);
    const answered = { status: 'answered', reason: 'Everything went.' };
    const done = bodyOf<Request>(await step(manager, bodyOf<Request>(put), 'status', answered).expect(200));
    expect(done).toMatchObject({ status: 'answered', objectionsBy: null });
    const work = async () => (await tasksOf(manager, id)).filter(({ key }) => key.endsWith(request.id));
    expect((await work()).map(({ key, state }) => [key.split(':')[0], state])).toEqual([
      ['request-to-counsel', 'done'],
      ['request-objections', 'done'],
      ['answer-request', 'done'],
    ]);
    const answer = await taskOf(manager, id, `answer-request:${request.id}`);
    expect((await eventsOf(manager, id, answer.id)).at(-1)?.words).toContain(request.number);
    await step(manager, done, 'status', { status: 'open', reason: 'They want more.' }).expect(200);
    expect(await taskOf(manager, id, `answer-request:${request.id}`, 2)).toMatchObject({ state: 'open' });
  });

  it('say which packet was produced, with its head, and nothing that is not there', async () => {
    const id = await fresh();
    const packet = await makePacket(manager, id, draftFor('other-party'));
    const request = await log({ kind: 'records-request', incidents: [{ id }] });
    const said = { at: house().now(), to: 'N. Amparo', way: 'by courier', what: 'The packet.' };
    const produce = (body: object) => create(manager, `/api/requests/${request.id}/productions`, body);
    await produce({ ...said, packet: packet.id }).expect(422);
    await produce({ ...said, incident, packet: packet.id }).expect(422);
    await produce({ ...said, incident: id, packet: request.id }).expect(422);
    await produce({ ...said, at: later(1) }).expect(422);
    const { productions } = bodyOf<Request>(
      await produce({ ...said, incident: id, packet: packet.id }).expect(200),
    );
    expect(productions).toMatchObject([{ packet: packet.id, head: packet.head, by: { role: 'manager' } }]);
    const wrong = { ...said, what: 'It went by mail.', replaces: productions[0]?.id };
    expect(bodyOf<Request>(await produce(wrong).expect(200)).productions).toHaveLength(2);
    await produce({ ...wrong, replaces: id }).expect(422);
  });

  it('are listed by when they are due, the closed apart', async () => {
    const sooner = await log({ due: 'at', dueAt: later(3), dueBasis: 'stated' });
    const laterOne = await log({ due: 'at', dueAt: later(9), dueBasis: 'stated' });
    const unknown = await log();
    const list = async (query: string) =>
      bodyOf<{ items: Request[] }>(await manager.get(`/api/requests?limit=100&${query}`).expect(200)).items;
    const mine = [sooner.id, laterOne.id, unknown.id];
    const order = (await list('state=open')).map(({ id }) => id).filter((id) => mine.includes(id));
    expect(order).toEqual([unknown.id, sooner.id, laterOne.id]);
    await step(manager, sooner, 'status', { status: 'withdrawn', reason: 'They settled.' }).expect(200);
    expect((await list('state=closed'))[0]).toMatchObject({
      id: sooner.id,
      status: 'withdrawn',
      overdue: false,
    });
    expect((await list('kind=subpoena')).every((one) => !mine.includes(one.id))).toBe(true);
    const first = bodyOf<{ items: Request[]; next: string }>(await manager.get('/api/requests?limit=1'));
    const second = bodyOf<{ items: Request[] }>(
      await manager.get(`/api/requests?limit=1&after=${first.next}`),
    );
    expect(second.items[0]?.id).not.toBe(first.items[0]?.id);
  });

  it('are seen by counsel who was assigned an incident, without the other incidents', async () => {
    const [one, other] = [await fresh(), await fresh()];
    const person = await house().person('counsel');
    const counsel = await house().signedIn(person);
    const request = await log({ incidents: [{ id: one }, { id: other }] });
    await counsel.get(`/api/requests/${request.id}`).expect(404);
    expect(bodyOf<{ items: object[] }>(await counsel.get('/api/requests').expect(200)).items).toEqual([]);
    await manager.post(`/api/incidents/${one}/counsel`).send({ account: person.id }).expect(200);
    const seen = await counsel.get(`/api/requests/${request.id}`).expect(200);
    expect(JSON.stringify(seen.body)).not.toContain(other);
    const listed = await counsel.get('/api/requests').expect(200);
    expect(JSON.stringify(listed.body)).toContain(request.number);
    expect(JSON.stringify(listed.body)).not.toContain(other);
    await counsel.get(`/api/incidents/${one}/requests`).expect(200);
    await counsel.get(`/api/incidents/${other}/requests`).expect(404);
    expect(JSON.stringify(await entriesOf(one))).not.toContain(other);
  });

  it('are taken from whoever was handed a paper, who sees no more than a number', async () => {
    const id = await fresh();
    const paper = {
      from: 'A process server',
      receivedAt: house().now(),
      way: 'served-in-person',
      note: 'It lies in the safe.',
    };
    const taken = await create(staff, '/api/served-papers', { ...paper, incident: id }).expect(201);
    expect(Object.keys(bodyOf<object>(taken)).sort()).toEqual(['id', 'number', 'receivedAt', 'version']);
    const request = await readRequest(manager, bodyOf<Request>(taken));
    expect(request).toMatchObject({
      kind: 'not-read',
      due: 'unknown',
      asked: paper.note,
      incidents: [{ held: false }],
    });
    expect(await taskOf(manager, id, `read-request:${request.id}`)).toMatchObject({ state: 'open' });
    await staff.get(`/api/requests/${request.id}`).expect(403);
    const { browser: device } = await house().device(await house().signedIn('administrator'));
    await create(device, '/api/served-papers', { ...paper, receivedAt: later(1) }).expect(201);
    const read = letter(house().now(), { kind: 'subpoena', reason: 'It was read.' });
    await manager.put(`/api/requests/${request.id}`).set('If-Match', '"1"').send(read).expect(200);
    expect((await holdsOf(id)).held).toBe(true);
    expect(await taskOf(manager, id, `read-request:${request.id}`)).toMatchObject({ state: 'superseded' });
    await create(staff, '/api/served-papers', { ...paper, incident: request.id }).expect(422);
  });

  it('stop a deletion while they are open, and also while nobody knows what they concern', async () => {
    const stops = house().app.get(DeletionStops, { strict: false });
    const id = await fresh();
    const numbersFor = async (target: object): Promise<string> =>
      (await stops.of({ incidentId: null, kind: 'rental', days: null, ...target }))
        .filter(({ by }) => by === 'request')
        .map(({ words }) => words)
        .join();
    const named = await log({ kind: 'access-request', incidents: [{ id }] });
    const inMay = await log({ kind: 'subpoena', periodFrom: '2025-05-01', periodThrough: '2025-05-31' });
    const may = { days: { from: '2025-05-10', through: '2025-05-10' } };
    expect(await numbersFor({ incidentId: id })).toContain(named.number);
    expect(await numbersFor({ incidentId: id })).toContain(inMay.number);
    expect(await numbersFor(may)).toContain(inMay.number);
    expect(await numbersFor(may)).not.toContain(named.number);
    expect(await numbersFor({ days: { from: '2025-06-01', through: '2025-06-30' } })).not.toContain(
      inMay.number,
    );
    for (const request of [named, inMay]) {
      await step(manager, request, 'status', { status: 'answered', reason: 'Done.' }).expect(200);
    }
    expect(await numbersFor({ incidentId: id })).not.toContain(named.number);
    expect(await numbersFor(may)).not.toContain(inMay.number);
  });
});
