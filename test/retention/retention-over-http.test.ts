import { beforeAll, expect, it } from 'vitest';
import { EvidenceSettings } from '../../src/server/evidence/evidence.api.js';
import type { Browser } from '../accounts/house.js';
import { create, describeHouse } from '../accounts/house.js';
import { bodyOf, openIncident, writeSection } from '../evidence/evidence-desk.js';
import {
  bytesOnDisk,
  close,
  decide,
  everything,
  faults,
  filesUnder,
  fullIncident,
  lineOf,
  lines,
  PLANTED,
  told,
  YEARS,
} from './retention-desk.js';

describeHouse('what has been kept long enough', (house) => {
  let manager: Browser;
  let id: string;
  let later: string;
  const again = async () => void (manager = await house().signedIn('manager'));
  const words = Object.values(PLANTED);

  beforeAll(async () => {
    await again();
    id = await fullIncident(manager);
    later = await fullIncident(manager);
    await close(house(), manager, id);
  });

  it('is listed for nobody while its time runs, and only for managers', async () => {
    expect((await lines(manager)).filter(({ incidentId }) => incidentId === id)).toEqual([]);
    for (const role of ['staff', 'counsel'] as const)
      await (await house().signedIn(role)).get('/api/retention').expect(403);
    await house().browser().get('/api/retention').expect(401);
  });

  it('is due kind by kind, each with its periods, reasons and sources; an open incident is not', async () => {
    house().letPass(6 * YEARS);
    await again();
    const medical = await lineOf(manager, 'medical', id);
    expect(medical).toMatchObject({ state: 'due', stops: [], missing: [], holds: { fields: 2 } });
    expect(medical?.periods[0]).toMatchObject({ basis: 'choice', citation: null, months: 60 });
    expect(medical?.periods.map(({ citation }) => citation)).toContain('46 U.S.C. 30106');
    // An employee was surely not hurt, and it surely happened in Texas.
    const ids = medical?.periods.map((one) => one.id);
    expect(ids).not.toContain('employee-medical');
    expect(ids).not.toContain('another-states-claim');
    expect(await lineOf(manager, 'incident-record', id)).toBeUndefined();
    expect(await lineOf(manager, 'drafts', id)).toMatchObject({ state: 'due', holds: { drafts: 1 } });
    expect(
      (await lines(manager)).filter(({ incidentId }) => incidentId === later).map(({ kind }) => kind),
    ).toEqual(['drafts']);
  });

  it('pages, and tells how many there are of each', async () => {
    const first = bodyOf<{ items: { id: string }[]; next: string; counts: { due: number } }>(
      await manager.get('/api/retention?limit=2').expect(200),
    );
    expect(first.items).toHaveLength(2);
    const second = await manager.get(`/api/retention?limit=100&after=${first.next}`).expect(200);
    const rest = bodyOf<{ items: { id: string }[] }>(second).items.map((one) => one.id);
    expect([...first.items.map((one) => one.id), ...rest]).toEqual(
      (await lines(manager)).map((one) => one.id),
    );
    expect(first.counts.due).toBe((await lines(manager, 'limit=100&state=due')).length);
    await manager.get('/api/retention?state=gone').expect(422);
  });

  it('is kept until a day by decision, and is due again the day after', async () => {
    const line = await lineOf(manager, 'identity', id);
    const keep = { decision: 'keep', reason: 'Counsel asked.' };
    expect((await decide(manager, line, { ...keep, keepUntil: '2020-01-01' })).status).toBe(422);
    expect((await decide(manager, line, keep)).body).toMatchObject({ errors: [{ pointer: '/keepUntil' }] });
    const until = new Date(Date.parse(house().now()) + YEARS).toISOString().slice(0, 10);
    expect(await decide(manager, line, { ...keep, keepUntil: until })).toMatchObject({
      status: 201,
      body: { decision: 'keep', keepUntil: until, gone: {} },
    });
    expect(await lineOf(manager, 'identity', id)).toBeUndefined();
  });

  it('does not go while a hold, a task or a report stops it, nor in another version than was seen', async () => {
    const seen = await lineOf(manager, 'medical', id);
    await create(manager, `/api/incidents/${id}/holds`, { reason: 'A preservation letter came.' }).expect(
      201,
    );
    expect((await decide(manager, seen, {})).status).toBe(412);
    const held = await lineOf(manager, 'medical', id);
    expect(held).toMatchObject({ state: 'stopped', stops: [{ by: 'hold' }] });
    const refused = await decide(manager, held, {});
    expect(refused.status).toBe(409);
    expect(refused.body).toMatchObject({
      errors: [{ detail: expect.stringMatching(/hold has been on/) as string }],
    });
    expect(await everything(house())).toContain(PLANTED.hospital);

    const { holds } = bodyOf<{ holds: { id: string }[] }>(
      await manager.get(`/api/incidents/${id}/holds`).expect(200),
    );
    const release = { counsel: 'Cleo Law', releasedOn: '2032-01-01', reason: 'It was answered.' };
    await create(manager, `/api/incidents/${id}/holds/${holds[0]?.id}/release`, release).expect(200);
    await create(manager, `/api/incidents/${id}/tasks`, {
      title: 'Call them',
      dueAt: '2040-12-01T12:00:00Z',
      owner: 'manager',
    }).expect(201);
    expect((await lineOf(manager, 'medical', id))?.stops).toMatchObject([{ by: 'task' }]);
    await house().plainSql(`UPDATE task SET state = 'done' WHERE incident_id = '${id}'`);
    await house().plainSql(`UPDATE duty_state SET settled = false WHERE incident_id = '${id}'`);
    expect((await lineOf(manager, 'medical', id))?.stops[0]).toMatchObject({ by: 'report' });
    await house().plainSql(`UPDATE duty_state SET settled = true WHERE incident_id = '${id}'`);
    expect((await lineOf(manager, 'medical', id))?.state).toBe('due');
  });

  it('goes by decision: medical detail out of record, history and reasons; the rest proves itself', async () => {
    const before = (await everything(house())).split(PLANTED.hospital).length;
    expect(before).toBeGreaterThan(2);
    const line = await lineOf(manager, 'medical', id);
    const done = await decide(manager, line, {});
    expect(done).toMatchObject({ status: 201, body: { decision: 'delete', gone: { fields: 2 } } });
    const { body } = (await manager.get(`/api/incidents/${id}/sections/people`).expect(200)) as {
      body: unknown;
    };
    expect(body).toMatchObject({
      document: { people: [{ id: 'p1', name: PLANTED.name, outcome: told('injured') }] },
    });
    expect(JSON.stringify(body)).not.toContain('first-aid');
    for (const path of ['history?limit=100', 'record']) {
      const told = JSON.stringify((await manager.get(`/api/incidents/${id}/${path}`)).body).toLowerCase();
      for (const word of [PLANTED.hospital, PLANTED.earlier, PLANTED.why]) expect(told).not.toContain(word);
    }
    expect(await faults(house())).toEqual([]);
    expect(await lineOf(manager, 'medical', id)).toBeUndefined();
    // No determination was made of what is left, so that nothing was reopened.
    expect(
      await house().plainSql(`SELECT settled FROM duty_state WHERE incident_id = '${id}'`),
    ).not.toContainEqual(expect.objectContaining({ settled: 0 }));
    const { items } = bodyOf<{ items: object[] }>(await manager.get('/api/retention/decisions').expect(200));
    expect(items).toMatchObject([
      { kind: 'medical', decision: 'delete', incidentId: id, reason: 'Its time is over.' },
      { kind: 'identity', decision: 'keep' },
    ]);
  });

  it('goes once for a key, and not at all when its time is not over', async () => {
    const asked = { kind: 'incident-record', incident: id, decision: 'delete', reason: 'Early.' };
    await create(manager, '/api/retention/decisions', asked).set('If-Match', '"1"').expect(409);
    await create(manager, '/api/retention/decisions', { ...asked, kind: 'nothing' })
      .set('If-Match', '"1"')
      .expect(422);
    await create(manager, '/api/retention/decisions', {
      kind: 'mails',
      decision: 'delete',
      reason: 'x',
    }).expect(422);
  });

  it('goes whole: no word of it is left in any row, file or packet, and the log says what went, by whom and why', async () => {
    await close(house(), manager, later);
    house().letPass(12 * YEARS);
    await again();
    const folder = house().app.get(EvidenceSettings).folder;
    const [rows, disk, files] = [await everything(house()), bytesOnDisk(house()), filesUnder(folder).length];
    // The search finds each before; so it is worth something that it finds none after.
    for (const word of words) expect(rows).toContain(word);
    if (house().database.engine === 'sqlite') for (const word of words) expect(disk).toContain(word);
    expect(files).toBeGreaterThan(2);

    for (const incident of [id, later]) {
      const line = await lineOf(manager, 'incident-record', incident);
      expect(line).toMatchObject({ state: 'due', holds: { files: 1, packets: 1, privileged: 1, drafts: 1 } });
      expect((await decide(manager, line, {})).body).toMatchObject({ errors: [{ pointer: '/counsel' }] });
      const directed = { counsel: 'Cleo Law', directedOn: '2044-01-01' };
      expect(await decide(manager, line, directed)).toMatchObject({
        status: 201,
        body: { gone: { files: 1, packets: 1, privileged: 1, drafts: 1 }, counsel: 'Cleo Law' },
      });
    }
    await manager.get(`/api/incidents/${id}/evidence`).expect(200);
    const after = await everything(house());
    for (const word of words) expect(after).not.toContain(word);
    const left = bytesOnDisk(house());
    for (const word of words) expect(left).not.toContain(word);
    expect(filesUnder(folder)).toEqual([]);
    expect(await faults(house())).toEqual([]);
    expect((await lines(manager)).filter(({ incidentId }) => incidentId === id)).toEqual([]);
    const section = await house().plainSql(
      `SELECT document FROM incident_section WHERE section = 'retention' AND incident_id = '${id}'`,
    );
    expect(JSON.stringify(section)).toMatch(/incident-record/);
    for (const path of [
      '',
      '/record',
      '/evidence',
      '/packets',
      '/tasks',
      '/determination',
      '/duties',
      '/custody',
    ])
      await manager.get(`/api/incidents/${id}${path}`).expect(200);
    const packets = bodyOf<{ items: { id: string; deleted: { by: string } }[] }>(
      await manager.get(`/api/incidents/${id}/packets`),
    ).items;
    expect(packets[0]?.deleted.by).toMatch(/manager/);
    await manager.get(`/api/incidents/${id}/packets/${packets[0]?.id}/archive`).expect(409);
  });

  it('is named by the check when somebody takes content away past the service, or puts it back', async () => {
    const one = await openIncident(manager);
    await writeSection(manager, one, 'account', { whatHappened: told('A buoy.') });
    const taken = `UPDATE amendment SET openings = '[{"from":null,"to":null},{"from":null,"to":null}]'
      WHERE incident_id = '${one}' AND section = 'account'`;
    await house().plainSql(taken);
    expect((await faults(house())).map(({ code }) => code)).toContain('content-removed');
  });
});
