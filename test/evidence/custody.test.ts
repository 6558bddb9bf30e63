import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { HAND_OVER_SENT, ITEM_SENT, OUTSIDE_SENT } from '../../src/server/evidence/evidence-examples.js';
import { type Browser, create, describeHouse } from '../accounts/house.js';
import { type Answer, bodyOf, openIncident } from './evidence-desk.js';

interface Item extends Answer {
  version: number;
  gaps: string[];
  handOvers: { from: string; to: string }[];
}

describeHouse('things and what others hold', (house) => {
  let staff: Browser;
  let incident: string;
  let custody: string;
  let outside: string;
  beforeAll(async () => {
    staff = await house().signedIn('staff');
    incident = await openIncident(staff);
    custody = `/api/incidents/${incident}/custody`;
    outside = `/api/incidents/${incident}/outside-evidence`;
  });

  const listed = async (path: string): Promise<Item[]> =>
    bodyOf<{ items: Item[] }>(await staff.get(path).expect(200)).items;
  const added = async (path: string, body: object): Promise<Item> =>
    bodyOf<Item>(await create(staff, path, body).expect(201));

  describe('a thing', () => {
    it('is entered with its gaps, and handed on with the holes named', async () => {
      const { id, gaps, version } = await added(custody, ITEM_SENT);
      expect([version, gaps]).toEqual([1, ['There is no photograph of it as it was found.']]);
      await added(`${custody}/${id}/hand-overs`, HAND_OVER_SENT);
      const late = { from: 'Cole', to: 'Laboratory', at: '2026-06-15T09:00:00-05:00', why: 'Examination' };
      const last = await added(`${custody}/${id}/hand-overs`, late);
      expect(last).toMatchObject({ version: 3, handOvers: [HAND_OVER_SENT, late] });
      expect(last.gaps).toContain('Nobody says how it came from Game warden Pike to Cole.');
    });

    it('and each of its hand-overs is entered once, however often it is sent', async () => {
      const before = (await listed(custody)).length;
      const [key, again] = [randomUUID(), randomUUID()];
      const made = await Promise.all([1, 2, 3].map(() => create(staff, custody, { what: 'Hose' }, key)));
      const [id] = new Set(made.map((answer) => bodyOf(answer).id));
      await Promise.all(
        [1, 2, 3].map(() => create(staff, `${custody}/${id}/hand-overs`, HAND_OVER_SENT, again).expect(201)),
      );
      const items = await listed(custody);
      expect(items).toHaveLength(before + 1);
      expect(items.find((item) => item.id === id)?.handOvers).toHaveLength(1);
    });

    it('keeps each of many hand-overs at once', async () => {
      const { id } = await added(custody, { what: 'Life jacket' });
      const send = (n: number) =>
        create(staff, `${custody}/${id}/hand-overs`, { ...HAND_OVER_SENT, to: `Hand ${n}` }).expect(201);
      await Promise.all(Array.from({ length: 15 }, (_, n) => send(n)));
      const item = (await listed(custody)).find((one) => one.id === id);
      expect(new Set(item?.handOvers.map(({ to }) => to)).size).toBe(15);
    });

    it.each<[string, object, string]>([
      ['nothing', {}, '/what'],
      ['a day for an instant', { what: 'Hose', foundAt: '2026-06-13' }, '/foundAt'],
      ['hand-overs', { what: 'Hose', handOvers: [] }, '/handOvers'],
    ])('is not entered with %s', async (_what, body, pointer) => {
      const answer = await create(staff, custody, body).expect(422);
      expect(answer.body).toMatchObject({ errors: [{ pointer }] });
    });

    it('that is not there is handed to nobody', async () => {
      await create(staff, `${custody}/${randomUUID()}/hand-overs`, HAND_OVER_SENT).expect(404);
      await create(staff, `/api/incidents/${randomUUID()}/custody`, ITEM_SENT).expect(404);
    });
  });

  describe('what others hold', () => {
    it('comes with what is to be done, the soonest overwritten first', async () => {
      await added(outside, {
        kind: 'weather',
        state: 'received',
        holder: 'Airport',
        askedAt: '2026-06-14T09:00:00Z',
      });
      await added(outside, { ...OUTSIDE_SENT, overwrittenAt: '2026-06-27T00:00:00Z' });
      await added(outside, { ...OUTSIDE_SENT, what: 'The first', overwrittenAt: '2026-06-20T00:00:00Z' });
      const [first, , last] = await listed(outside);
      expect(first).toMatchObject({
        what: 'The first',
        gaps: expect.arrayContaining(['Nobody has asked for it yet.']) as string[],
      });
      expect(last).toMatchObject({ kind: 'weather', gaps: [] });
    });

    it('is followed on the version that was seen', async () => {
      const { id } = await added(outside, OUTSIDE_SENT);
      const asked = { ...OUTSIDE_SENT, state: 'asked', askedAt: '2026-06-13T22:00:00Z', answer: 'Will look' };
      const put = (version: number, body: object) =>
        staff.put(`${outside}/${id}`).set('If-Match', `"${version}"`).send(body);
      expect((await put(1, asked).expect(200)).headers['etag']).toBe('"2"');
      const stale = await put(1, { ...asked, state: 'refused' }).expect(412);
      expect(stale.body).toMatchObject({ current: { version: 2, state: 'asked' } });
      await put(2, { ...asked, state: 'lost' }).expect(422);
      await staff.put(`${outside}/${id}`).send(asked).expect(428);
    });
  });

  it('is in the record, by amendments that the log proves', async () => {
    const sections = await house().plainSql(
      `SELECT DISTINCT section FROM amendment WHERE incident_id = '${incident}' ORDER BY section`,
    );
    expect(sections).toEqual(
      ['call', 'custody', 'incident', 'outside-evidence'].map((section) => ({ section })),
    );
  });
});
