import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { Clock } from '../../src/server/platform/clock.js';
import { describeEngines } from '../support/databases.js';
import { schemaDrift } from '../support/schema-drift.js';
import { DOCK_PHONE, person, RECORD } from './record-app.js';
import { Client } from './record-desk.js';

const staff = person('staff', 'Ann');
const manager = person('manager', 'Max');

describeEngines('the record', RECORD, (desk) => {
  const client = new Client(desk);

  it('has the schema that its rows declare', async () => {
    expect(await schemaDrift(desk.target, RECORD.rows)).toEqual([]);
  });

  describe('an incident', () => {
    it('is opened by one touch of a shared phone, with a reference of the local year', async () => {
      vi.spyOn(client.app.get(Clock), 'now').mockReturnValue('2027-01-01T05:59:59.000Z');
      const one = await client.open(DOCK_PHONE, { call: { said: 'help', craftNamed: ['PWC 7'] } });
      vi.spyOn(client.app.get(Clock), 'now').mockReturnValue('2027-01-01T06:00:00.000Z');
      const next = await client.open(DOCK_PHONE, {});
      vi.restoreAllMocks();
      expect([one.status, next.status]).toEqual([201, 201]);
      expect(one.body).toMatchObject({
        reference: '2026-0001',
        status: 'open',
        openedAt: '2027-01-01T05:59:59.000Z',
        sections: [{ section: 'call', version: 1, finished: false }, { section: 'incident' }],
      });
      expect(one.headers).toMatchObject({
        etag: '"2"',
        location: `/api/incidents/${String(one.body['id'])}`,
      });
      expect(next.body).toMatchObject({ reference: '2027-0001' });
      expect(JSON.stringify(one.body)).not.toContain('help');
    });

    it('is never made twice by a retry, whoever retries, and keeps the id of the phone', async () => {
      const [id, key] = [randomUUID(), randomUUID()];
      const body = { id, call: { said: 'help' } };
      const answers = await Promise.all(Array.from({ length: 5 }, () => client.open(DOCK_PHONE, body, key)));
      expect(answers.map(({ status }) => status)).toEqual([201, 201, 201, 201, 201]);
      expect(new Set(answers.map((answer) => answer.body['reference'])).size).toBe(1);
      expect(answers[0]?.body['id']).toBe(id);
      expect((await client.open(DOCK_PHONE, { id, call: { said: 'other' } }, key)).status).toBe(422);
      expect(await client.open(staff, body, randomUUID())).toMatchObject({
        status: 409,
        body: { errors: [{ pointer: '/id' }] },
      });
    });

    it.each<[string, unknown, string]>([
      ['a member that there is not', { weather: 'fine' }, '/weather'],
      ['a fault in the call', { call: { kind: 'urgent' } }, '/call/kind'],
      ['an id that is none', { id: 'x' }, '/id'],
      ['a list', [], ''],
      ['a card number', { call: { said: 'charge 4111 1111 1111 1111' } }, '/call/said'],
    ])('is refused for %s at its pointer', async (_what, body, pointer) => {
      const answer = await client.open(staff, body);
      expect(answer).toMatchObject({ status: 422, body: { errors: [{ pointer }] } });
    });

    it('is not opened without a key', async () => {
      expect((await client.send(staff, 'POST', '', {})).status).toBe(400);
    });

    it('of one touch is never determined to "not required"', async () => {
      const id = await client.opened(DOCK_PHONE);
      const { status, body } = await client.get(manager, `/${id}/determination`);
      expect(status).toBe(200);
      expect(body['assumptions']).toMatchObject([{ pointer: '/occurredAt' }]);
      const { duties, source } = body['determination'] as { duties: { outcome: string }[]; source: string };
      expect(source).toMatch(/^\d{4}-\d{4}$/);
      expect(duties.map(({ outcome }) => outcome)).toContain('undetermined');
      expect(duties.map(({ outcome }) => outcome)).not.toContain('not-required');
    });

    it.each(['/nowhere', `/${randomUUID()}`, '/%00', `/${randomUUID()}/sections/call`])(
      'that is not there is 404: %s',
      async (path) => {
        expect((await client.get(staff, path)).status).toBe(404);
      },
    );

    it('is closed and opened again with a reason, on the version that was seen', async () => {
      const id = await client.opened(staff);
      const close = { status: 'closed', reason: 'Everyone home, craft checked.' };
      expect((await client.write(manager, `/${id}/status`, close, 1)).status).toBe(412);
      expect(await client.write(manager, `/${id}/status`, close, 2)).toMatchObject({
        status: 200,
        body: { status: 'closed', version: 3 },
      });
      expect((await client.get(staff, `?status=closed&q=${'pwc'}`)).body['items']).toMatchObject([{ id }]);
      expect((await client.write(staff, `/${id}/status`, close, 3)).status).toBe(403);
    });

    it('joined to another says so of both, and each keeps its reference', async () => {
      const [one, other] = [await client.opened(staff), await client.opened(staff)];
      const joined = { incident: other, reason: 'The dock and the renter called about one craft.' };
      expect((await client.send(staff, 'POST', `/${one}/same-event`, joined)).status).toBe(200);
      for (const [id, same] of [
        [one, other],
        [other, one],
      ]) {
        const { body } = await client.get(staff, `/${String(id)}/record`);
        const sections = body['sections'] as { section: string; document: object }[];
        expect(sections.find(({ section }) => section === 'incident')?.document).toMatchObject({
          sameEventAs: [same],
        });
      }
    });
  });

  describe('a list', () => {
    let ids: string[] = [];
    beforeAll(async () => {
      for (const said of ['Zulu one: a 100% loss', 'Zulu two: señora fell_over', 'Zulu three']) {
        ids.push(await client.opened(staff, { said }));
      }
      ids = ids.reverse();
    });

    it('comes by pages, the latest first, each incident once', async () => {
      const first = await client.get(staff, '?q=zulu&limit=2');
      const next = await client.get(staff, `?q=zulu&limit=2&after=${String(first.body['next'])}`);
      const idsOf = ({ body }: typeof first) => (body['items'] as { id: string }[]).map(({ id }) => id);
      expect([...idsOf(first), ...idsOf(next)].sort()).toEqual([...ids].sort());
      expect([idsOf(first).length, next.body['next']]).toEqual([2, null]);
    });

    it.each([
      ['zulu SENORA', 1],
      ['zulu 100%', 1],
      ['fell_over', 1],
      ['fellxover', 0],
      ['zulu %', 3],
      ['zul', 3],
      ['ulu', 0],
      ['?', 0],
      ["' OR 1=1 --", 0],
    ])('finds by words as they are: %s', async (q, found) => {
      const { body } = await client.get(staff, `?q=${encodeURIComponent(q)}&limit=100`);
      expect(
        (body['items'] as unknown[]).filter((one) => ids.includes((one as { id: string }).id)),
      ).toHaveLength(found);
    });

    it.each(['?limit=0', '?status=lost', '?after=!', '?openedFrom=yesterday', '?colour=red', '?q=a&q=b'])(
      'refuses %s',
      async (query) => {
        expect((await client.get(staff, query)).status).toBe(422);
      },
    );
  });

  it('reads as of any moment', async () => {
    const clock = vi.spyOn(client.app.get(Clock), 'now');
    const last = (await desk.plainSql('SELECT last_at FROM record_log'))[0]?.['last_at'];
    const base = Date.parse(String(last));
    const moment = (minute: number) => new Date(base + minute * 60_000).toISOString();

    clock.mockReturnValue(moment(1));
    const id = await client.opened(staff, { said: 'help' });
    clock.mockReturnValue(moment(3));
    await client.write(staff, `/${id}/sections/call`, { document: { said: 'help, two people' } }, 1);
    clock.mockRestore();
    const said = async (minute: number) => {
      const { body } = await client.get(staff, `/${id}/record?at=${moment(minute)}`);
      const sections = body['sections'] as { section: string; document: Record<string, unknown> }[];
      return sections.find(({ section }) => section === 'call')?.document['said'];
    };
    expect([await said(0), await said(1), await said(2), await said(3)]).toEqual([
      undefined,
      'help',
      'help',
      'help, two people',
    ]);
  });

  it('proves itself in the end', async () => {
    expect(await client.check()).toEqual([]);
  });
});
