import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { EscalationWatch, FollowUp } from '../../src/server/follow-up/follow-up.api.js';
import { type Browser, create, describeHouse, MINUTE, type Person } from '../accounts/house.js';
import {
  bodyOf,
  DEAD,
  eventsOf,
  openIncident,
  peopleOf,
  step,
  STITCHED,
  type Task,
  taskOf,
  tasksOf,
  UNHURT,
  write,
} from './desk.js';

const DONE = { evidence: 'Told at 15:10, R. Vale, HM-2291.', evidenceIds: ['e1'] };

describeHouse('the work after an incident', (house) => {
  let ana: Person;
  let sam: Person;
  let manager: Browser;
  let staff: Browser;
  let incident: { id: string; reference: string };

  beforeAll(async () => {
    ana = await house().person('manager');
    sam = await house().person('staff');
    manager = await house().signedIn(ana);
    staff = await house().signedIn(sam);
    incident = await openIncident(staff, house().now());
  });

  const task = (key: string, round = 1): Promise<Task> => taskOf(staff, incident.id, key, round);
  const act = (one: Task, what: string, body: object, who = staff) => step(who, incident.id, one, what, body);
  const events = async (one: Task): Promise<string[]> =>
    (await eventsOf(staff, incident.id, one.id)).map(({ kind }) => kind);

  describe('planned from the first touch', () => {
    it('begins with the headcount, and asks what nobody has ruled out', async () => {
      const tasks = await tasksOf(staff, incident.id);
      expect(tasks[0]).toMatchObject({ key: 'headcount', state: 'open', escalates: true });
      const keys = tasks.map(({ key }) => key);
      expect(keys).toContain('craft-kept:pwc-7');
      expect(keys.some((key) => key.startsWith('open-duty:'))).toBe(true);
    });

    it('supersedes what the facts no longer call for, and says so', async () => {
      await write(staff, incident.id, 'people', peopleOf(UNHURT));
      const headcount = await task('headcount');
      expect(headcount.state).toBe('superseded');
      expect(await events(headcount)).toEqual(['added', 'superseded']);
      expect((await tasksOf(staff, incident.id)).map(({ key }) => key)).not.toContain('counsel-told');
    });

    it('calls for the report and for counsel when somebody turns out to need stitches', async () => {
      await write(staff, incident.id, 'people', peopleOf(STITCHED));
      expect(await task('file:us/accident-report:c1')).toMatchObject({ state: 'open', escalates: false });
      expect(await task('counsel-told')).toMatchObject({ state: 'open' });
      expect((await task('open-duty:us/accident-report')).state).toBe('superseded');
    });
  });

  describe('done by people', () => {
    it('takes a completion with its evidence, on the version that was read', async () => {
      const before = await task('insurer-told');
      await act(before, 'completion', {}).expect(422);
      await act({ ...before, version: 99 }, 'completion', DONE).expect(412);
      const done = bodyOf<Task>(await act(before, 'completion', DONE).expect(200));
      expect(done).toMatchObject({ state: 'done', version: before.version + 1 });
      await act(done, 'completion', DONE).expect(409);
      const last = (await eventsOf(staff, incident.id, done.id)).at(-1);
      expect(last).toMatchObject({
        kind: 'done',
        words: DONE.evidence,
        evidenceIds: ['e1'],
        person: sam.name,
      });
    });

    it('is completed by one of many who do it at the same moment', async () => {
      const one = await task('records-frozen');
      const answers = await Promise.all(
        Array.from({ length: 12 }, () => act(one, 'completion', DONE).then(({ status }) => status)),
      );
      expect(answers.filter((status) => status === 200)).toHaveLength(1);
      expect(answers.filter((status) => status === 412)).toHaveLength(11);
      expect((await events(one)).filter((kind) => kind === 'done')).toHaveLength(1);
    });

    it('undoes what was done by mistake, and keeps that it was', async () => {
      const done = await task('insurer-told');
      const open = bodyOf<Task>(await act(done, 'undoing', { why: 'The other insurer.' }).expect(200));
      expect(open.state).toBe('open');
      await act(open, 'undoing', { why: 'Again.' }).expect(409);
      await act(open, 'completion', DONE).expect(200);
      expect(await events(open)).toEqual(expect.arrayContaining(['done', 'undone', 'done']));
    });

    it('lets staff take a task, and a manager give it to anybody but counsel', async () => {
      const counsel = await house().person('counsel');
      const one = await task('photographs');
      await act(one, 'assignee', { accountId: ana.id }).expect(403);
      const taken = bodyOf<Task>(await act(one, 'assignee', { accountId: sam.id }).expect(200));
      expect(taken.assignee).toBe(sam.id);
      await act(taken, 'assignee', { accountId: counsel.id }, manager).expect(422);
      await act(taken, 'assignee', { accountId: randomUUID() }, manager).expect(422);
      const given = bodyOf<Task>(await act(taken, 'assignee', { accountId: ana.id }, manager).expect(200));
      expect(given.assignee).toBe(ana.id);
      const free = bodyOf<Task>(await act(given, 'assignee', {}, manager).expect(200));
      expect(free.assignee).toBeNull();
    });

    it('adds a task of somebody’s own once, which no plan takes away', async () => {
      const own = { title: 'Ask the marina for the camera', dueAt: '2026-06-14T12:00:00-05:00' };
      const path = `/api/incidents/${incident.id}/tasks`;
      const key = randomUUID();
      const first = bodyOf<Task>(await create(staff, path, own, key).expect(201));
      const again = bodyOf<Task>(await create(staff, path, own, key).expect(201));
      expect(again.id).toBe(first.id);
      expect(first).toMatchObject({ dueAt: '2026-06-14T17:00:00.000Z', state: 'open', overdue: true });
      await create(staff, path, { ...own, colour: 'red' }).expect(422);
      await write(staff, incident.id, 'account', { whatHappened: { value: 'It capsized.', known: 'told' } });
      expect((await task(first.key)).state).toBe('open');
    });
  });

  describe('when late facts come', () => {
    it('asks again for work that was done on less, in a round of its own, and keeps the first', async () => {
      await write(staff, incident.id, 'people', peopleOf(STITCHED, DEAD));
      expect((await task('insurer-told')).state).toBe('done');
      const again = await task('insurer-told', 2);
      expect(again.state).toBe('open');
      const [added] = await eventsOf(staff, incident.id, again.id);
      expect(added).toMatchObject({ kind: 'added', words: 'Due again; new since it was done: a death.' });
      const first = await task('insurer-told');
      await act(first, 'undoing', { why: 'It was not.' }).expect(409);
    });

    it('sends no notice to a bereaved family', async () => {
      expect((await task('renter-told')).state).toBe('superseded');
      expect((await task('family')).state).toBe('open');
      const writing = await staff.get(`/api/incidents/${incident.id}/who-may-be-written-to`).expect(200);
      expect(writing.body).toMatchObject({
        family: { automatic: false, notice: false },
        renter: { notice: false },
      });
    });
  });

  describe('that cannot wait', () => {
    const NOTICE = 'notice:us/death-or-disappearance-notice';

    it('is put to one after the other until somebody acknowledges', async () => {
      const watch = house().app.get(EscalationWatch);
      const notice = await task(NOTICE);
      expect(notice.escalates).toBe(true);
      expect(await watch.sweep(house().now())).toBeGreaterThan(0);
      expect(await watch.sweep(house().now())).toBe(0);
      house().letPass(10 * MINUTE);
      expect(await watch.sweep(house().now())).toBeGreaterThan(0);
      const asked = (await eventsOf(staff, incident.id, notice.id)).filter(({ kind }) => kind === 'asked');
      // Nobody stands on the roster: managers are asked, and there is one of them.
      expect(asked.map(({ aboutAccountId }) => aboutAccountId)).toEqual([ana.id, ana.id]);
      const shown = await staff.get('/api/escalations').expect(200);
      expect(JSON.stringify(shown.body)).toContain(notice.id);

      const path = `/api/incidents/${incident.id}/tasks/${notice.id}/acknowledgement`;
      const taken = bodyOf<Task>(await manager.post(path).send({}).expect(200));
      expect(taken.acknowledgedBy).toBe(ana.name);
      expect(bodyOf<Task>(await staff.post(path).send({}).expect(200)).acknowledgedBy).toBe(ana.name);
      house().letPass(10 * MINUTE);
      await watch.sweep(house().now());
      expect((await events(notice)).filter((kind) => kind === 'asked')).toHaveLength(2);
      const left = await staff.get('/api/escalations').expect(200);
      expect(JSON.stringify(left.body)).not.toContain(notice.id);
    });

    it('asks by the roster of the day where there is one', async () => {
      const day = house().now().slice(0, 10);
      const dayBefore = new Date(Date.parse(house().now()) - 86_400_000).toISOString().slice(0, 10);
      const entry = { accountId: sam.id, duty: 'shift-lead', from: dayBefore, to: day };
      await create(manager, '/api/roster', entry).expect(201);
      const other = await openIncident(staff, house().now());
      await house().app.get(EscalationWatch).sweep(house().now());
      const headcount = await taskOf(staff, other.id, 'headcount');
      const asked = (await eventsOf(staff, other.id, headcount.id)).filter(({ kind }) => kind === 'asked');
      expect(asked.map(({ aboutAccountId }) => aboutAccountId)).toEqual([sam.id]);
    });

    it('asks nobody about an incident that is closed', async () => {
      const closed = await openIncident(staff, house().now());
      const path = `/api/incidents/${closed.id}`;
      const { version } = bodyOf<{ version: number }>(await manager.get(path).expect(200));
      const status = { status: 'closed', reason: 'A drill.' };
      await manager.put(`${path}/status`).set('If-Match', `"${version}"`).send(status).expect(200);
      await house().app.get(EscalationWatch).sweep(house().now());
      const headcount = await taskOf(staff, closed.id, 'headcount');
      expect(headcount.state).toBe('open');
      const kinds = (await eventsOf(staff, closed.id, headcount.id)).map(({ kind }) => kind);
      expect(kinds).not.toContain('asked');
    });

    it('keeps whom a call reached, once', async () => {
      const notice = await task(NOTICE);
      const path = `/api/incidents/${incident.id}/tasks/${notice.id}/reached`;
      const reached = { whom: 'County dispatch', on: '911', at: '2026-06-13T11:30:00-05:00' };
      const key = randomUUID();
      await create(staff, path, reached, key).expect(200);
      await create(staff, path, reached, key).expect(200);
      const told = (await eventsOf(staff, incident.id, notice.id)).filter(({ kind }) => kind === 'reached');
      expect(told.map(({ words }) => words)).toEqual([
        'Reached County dispatch, on 911, at 2026-06-13T11:30:00-05:00.',
      ]);
    });

    it('lists whom to call, emergency services first, then the numbers of the station', async () => {
      const station = {
        name: 'North dock',
        timeZone: 'America/Chicago',
        numbers: [{ id: 'n1', of: 'dispatch', name: 'County dispatch', phone: '580-555-0123' }],
      };
      const { id } = bodyOf<{ id: string }>(await create(manager, '/api/stations', station).expect(201));
      const craft = { unitName: 'PWC 7', type: 'personal-watercraft', stationId: id };
      await create(manager, '/api/craft', craft).expect(201);
      const list = await staff.get(`/api/incidents/${incident.id}/call-list`).expect(200);
      const [nowhere, noTask] = ['call-list?station=%00', 'tasks/%00'].map(
        (path) => `/api/incidents/${incident.id}/${path}`,
      );
      await staff.get(nowhere ?? '').expect(422);
      await staff.get(noTask ?? '').expect(404);
      expect(list.body).toMatchObject({
        station: id,
        lines: [
          { tel: 'tel:911' },
          {
            tel: 'tel:5805550123',
            about: expect.arrayContaining([expect.stringMatching(/^Give: death/)]) as unknown,
          },
        ],
      });
    });
  });

  describe('over all incidents', () => {
    it('comes in pages by due time, each task once', async () => {
      const seen: string[] = [];
      const dues: string[] = [];
      for (let after = ''; ;) {
        const page = await staff.get(`/api/tasks?limit=7${after}`).expect(200);
        const { items, next } = bodyOf<{ items: Task[]; next: string | null }>(page);
        seen.push(...items.map(({ id }) => id));
        dues.push(...items.map(({ dueAt }) => dueAt ?? ''));
        if (next === null) break;
        after = `&after=${next}`;
      }
      expect(new Set(seen).size).toBe(seen.length);
      expect(dues).toEqual([...dues].sort());
      expect(seen.length).toBeGreaterThan(14);
    });

    it('is filtered by person and by what is overdue', async () => {
      const one = await task('statements');
      await act(one, 'assignee', { accountId: sam.id }).expect(200);
      const mine = bodyOf<{ items: Task[] }>(await staff.get('/api/tasks?mine=yes').expect(200)).items;
      expect(mine.map(({ id }) => id)).toEqual([one.id]);
      const overdue = bodyOf<{ items: Task[] }>(
        await staff.get('/api/tasks?due=overdue&limit=100').expect(200),
      );
      expect(overdue.items.length).toBeGreaterThan(0);
      expect(overdue.items.filter((late) => !late.overdue && late.dueAt !== null)).toEqual([]);
      await staff.get('/api/tasks?mine=perhaps').expect(422);
    });

    it('is given to the modules that tell people, with the reference of each incident', async () => {
      const followUp = house().app.get(FollowUp);
      const [mine] = await followUp.tasksOf(sam.id, house().now());
      expect(mine).toMatchObject({ reference: incident.reference, assigneeId: sam.id, own: false });
      const due = await followUp.dueAndOverdue(house().now());
      expect(due.some(({ overdue }) => overdue)).toBe(true);
    });
  });
});
