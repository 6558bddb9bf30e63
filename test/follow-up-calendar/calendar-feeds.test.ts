import { randomUUID } from 'node:crypto';
import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import ICAL from 'ical.js';
import { beforeAll, expect, it } from 'vitest';
import { AccessTable } from '../../src/server/platform/http/access-table.js';
import { type Browser, create, describeHouse, type Person } from '../accounts/house.js';
import { addTask, openIncident } from './work.js';

interface Feed {
  readonly id: string;
  readonly path: string;
}

describeHouse('the calendar feed', (house) => {
  let manager: Person;
  let managers: Browser;
  let incident: { id: string; reference: string };
  beforeAll(async () => {
    manager = await house().person('manager');
    managers = await house().signedIn(manager);
    incident = await openIncident(managers);
  });

  const renew = async (browser: Browser): Promise<Feed> =>
    (await create(browser, '/api/calendar-feeds', {}).expect(201)).body as Feed;
  /** As a calendar program reads it: without a cookie. */
  const read = (path: string) => house().browser().get(path);
  const events = async (path: string) => {
    const { text } = await read(path).expect(200);
    const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
    return calendar.getAllSubcomponents('vevent').map((component) => ({
      uid: new ICAL.Event(component).uid,
      sequence: new ICAL.Event(component).sequence,
      summary: new ICAL.Event(component).summary,
      status: String(component.getFirstPropertyValue('status')),
    }));
  };

  it('is read at a secret address without signing in', async () => {
    const { path } = await renew(managers);
    expect(path).toMatch(/^\/calendar\/[\w-]{43}\.ics$/);
    const answer = await read(path).expect(200);
    expect(answer.headers['content-type']).toBe('text/calendar; charset=utf-8');
    expect(answer.headers['cache-control']).toBe('private, no-cache');
    expect(answer.text).toMatch(/^BEGIN:VCALENDAR\r\n/);
  });

  it('holds the tasks of its owner and no others, with what became of them', async () => {
    const staff = await house().person('staff');
    const { path } = await renew(await house().signedIn(staff));
    const dueAt = new Date(Date.parse(house().now()) + 3_600_000).toISOString();
    const given = { assigneeId: staff.id, dueAt, title: 'Ask Maria about her leg' };
    const mine = await addTask(house(), incident.id, given);
    await addTask(house(), incident.id, { ...given, assigneeId: manager.id });
    await addTask(house(), incident.id, { ...given, dueAt: null });
    const event = { uid: mine, sequence: 0, summary: `${incident.reference}: a task that somebody added` };
    expect(await events(path)).toEqual([{ ...event, status: 'CONFIRMED' }]);
    await house().plainSql(`UPDATE task SET state = 'superseded', version = 2 WHERE id = '${mine}'`);
    expect(await events(path)).toEqual([{ ...event, sequence: 1, status: 'CANCELLED' }]);
    await house().plainSql(`UPDATE task SET updated_at = '2020-01-01T00:00:00.000Z' WHERE id = '${mine}'`);
    expect(await events(path)).toEqual([]);
  });

  it('shows managers what nobody was given', async () => {
    const task = await addTask(house(), incident.id, { owner: 'manager', dueAt: house().now() });
    const { path } = await renew(managers);
    expect((await events(path)).map(({ uid }) => uid)).toContain(task);
    const staff = await renew(await house().signedIn('staff'));
    expect(await events(staff.path)).toEqual([]);
  });

  it('has one address at a time: a new one ends the old one', async () => {
    const before = await renew(managers);
    const after = await renew(managers);
    await read(before.path).expect(404);
    await read(after.path).expect(200);
    const { items } = (await managers.get('/api/calendar-feeds').expect(200)).body as { items: object[] };
    expect(items).toEqual([{ id: after.id, createdAt: expect.any(String) as string }]);
  });

  it('tells its address once, not to a retry, and keeps it nowhere', async () => {
    const key = randomUUID();
    const first = (await create(managers, '/api/calendar-feeds', {}, key).expect(201)).body as Feed;
    const again = (await create(managers, '/api/calendar-feeds', {}, key).expect(201)).body as Feed;
    expect(again).toEqual({ ...first, path: null });
    await read(first.path).expect(200);
    const secret = first.path.slice('/calendar/'.length, -'.ics'.length);
    expect(JSON.stringify(await house().plainSql('SELECT * FROM calendar_feed'))).not.toContain(secret);
  });

  it('is revoked by its owner and nobody else, and is then as if it had never been', async () => {
    const { id, path } = await renew(managers);
    await (await house().signedIn('administrator')).delete(`/api/calendar-feeds/${id}`).expect(404);
    await read(path).expect(200);
    await managers.delete(`/api/calendar-feeds/${id}`).expect(204);
    const revoked = await read(path).expect(404);
    const never = await read(`/calendar/${'x'.repeat(43)}.ics`).expect(404);
    expect(revoked.body).toEqual(never.body);
    await managers.delete(`/api/calendar-feeds/${id}`).expect(404);
    expect((await managers.get('/api/calendar-feeds')).body).toEqual({ items: [] });
  });

  it('ends with the account of its owner', async () => {
    const staff = await house().person('staff');
    const { path } = await renew(await house().signedIn(staff));
    await read(path).expect(200);
    await house().plainSql(`UPDATE account SET active = false WHERE id = '${staff.id}'`);
    await read(path).expect(404);
  });

  it.each(['x.ics', `${'x'.repeat(43)}`, `${'x'.repeat(44)}.ics`, `..%2f${'x'.repeat(40)}.ics`])(
    'is not at /calendar/%s',
    async (file) => {
      const answer = await read(`/calendar/${file}`).expect(404);
      expect(answer.headers['content-type']).toContain('application/problem+json');
    },
  );

  it('is answered as the OpenAPI document says', async () => {
    const ajv = new Ajv2020({ strict: false });
    addFormats.default(ajv);
    ajv.addSchema({
      ...((await house().browser().get('/api/openapi.json')).body as object),
      $id: 'http://desk/',
    });
    const is = (schema: string, value: unknown): void => {
      const validate = ajv.compile({ $ref: `http://desk/#/components/schemas/${schema}` });
      expect([schema, validate(value), validate.errors]).toEqual([schema, true, null]);
    };
    is('NewCalendarFeed', await renew(managers));
    is('CalendarFeedList', (await managers.get('/api/calendar-feeds').expect(200)).body);
  });

  it('is declared as for anyone, and asks for a key at a create', async () => {
    const route = house()
      .app.get(AccessTable)
      .routes.find(({ path }) => path === '/calendar/:file');
    expect(route).toMatchObject({ who: ['anyone'] });
    await managers.post('/api/calendar-feeds').send({}).expect(400);
  });
});
