import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { CreateOnceRow } from '../../src/server/platform/database/create-once.row.js';
import { FLEET_ROWS } from '../../src/server/fleet/database/fleet-rows.js';
import { describeEngines } from '../support/databases.js';
import { addCraft, bodyOf, type FleetServer, startFleet } from './fleet-server.js';

const PWC = { type: 'personal-watercraft' };

describeEngines('craft', { rows: [CreateOnceRow, ...FLEET_ROWS] }, (desk) => {
  let server: FleetServer;
  beforeAll(async () => {
    server = await startFleet(desk);
  });
  afterAll(() => server.close());
  const aCraft = (different: object = {}) => addCraft(server, different);

  it('keep their numbers as typed, with remarks beside them', async () => {
    const craft = await aCraft({ hullNumber: 'abc-12345-D4O4', registrationNumber: 'MI 1234 AB' });
    expect(craft).toMatchObject({
      hullNumber: 'abc-12345-D4O4',
      registrationNumber: 'MI 1234 AB',
      registrationNumberReading: { remarks: ['MI on a hull is Mississippi; Michigan is MC.'] },
    });
    const { remarks } = craft['hullNumberReading'] as { remarks: string[] };
    expect(remarks.length).toBeGreaterThan(0);
  });

  it.each([['PWC 900'], ['pwc 0900'], ['  Pwc   900 ']])(
    'refuse a second one called %s',
    async (unitName) => {
      const taken = await server.get('/api/craft/matches?words=PWC%20900');
      if (bodyOf<{ items: { named: boolean }[] }>(taken).items.every(({ named }) => !named)) {
        await aCraft({ unitName: 'PWC 900' });
      }
      const refused = await server.post('/api/craft', { ...PWC, unitName }).expect(409);
      expect(refused.body).toMatchObject({ errors: [{ pointer: '/unitName' }] });
      const other = await aCraft();
      const renamed = await server.put(`/api/craft/${other.id}`, { ...PWC, unitName }, '"1"').expect(409);
      expect(renamed.body).toMatchObject({ errors: [{ pointer: '/unitName' }] });
    },
  );

  it('give their name to the next one when they are retired', async () => {
    await aCraft({ unitName: 'PWC 800', retiredOn: '2025-09-30' });
    await aCraft({ unitName: 'PWC 800' });
  });

  it('name a station that is there', async () => {
    const refused = await server
      .post('/api/craft', { ...PWC, unitName: 'PWC 600', stationId: randomUUID() })
      .expect(422);
    expect(refused.body).toMatchObject({ errors: [{ pointer: '/stationId' }] });
  });

  it('sent again unchanged make no new version', async () => {
    const { id, unitName } = await aCraft({ colours: ['red'] });
    const same = { ...PWC, unitName, colours: ['red'] };
    await server.put(`/api/craft/${id}`, same, '"1"').expect(200).expect('etag', '"1"');
  });

  it('left out of a change, a member is no longer said', async () => {
    const { id, unitName } = await aCraft({ colours: ['red'], make: 'Anything' });
    const put = await server.put(`/api/craft/${id}`, { ...PWC, unitName }, '"1"').expect(200);
    expect(put.body).not.toHaveProperty('make');
    expect(put.body).not.toHaveProperty('colours');
  });

  it.each<[string, object, string]>([
    ['another type than the rule knows', { type: 'submarine' }, '/type'],
    ['a blank name', { unitName: '  ' }, '/unitName'],
    ['a name of two lines', { unitName: 'PWC\n7' }, '/unitName'],
    ['a NUL, which one of the engines cannot keep', { make: 'a\u0000b' }, '/make'],
    ['half a character', { make: 'a\ud800b' }, '/make'],
    ['half a person', { capacityPeople: 2.5 }, '/capacityPeople'],
    ['a colour that is none', { colours: ['red', ''] }, '/colours/1'],
    ['a colour given twice', { colours: ['red', 'red'] }, '/colours'],
    ['a day that is not in the calendar', { retiredOn: '2026-02-30' }, '/retiredOn'],
    ['null for what is left out', { make: null }, '/make'],
  ])('refuse %s', async (_name, wrong, pointer) => {
    const refused = await server.post('/api/craft', { ...PWC, unitName: 'PWC 500', ...wrong }).expect(422);
    expect(refused.body).toMatchObject({ errors: [{ pointer }] });
  });

  it('are listed by name, numbers by their value, a page at a time, retired ones on request', async () => {
    for (const unitName of ['Kayak 10', 'kayak 9', 'Kayak 100', 'Ärger'])
      await aCraft({ unitName, type: 'paddlecraft' });
    const names = async (retired: string): Promise<string[]> => {
      const seen: string[] = [];
      let after = '';
      do {
        const answer = await server.get(`/api/craft?limit=7${retired}${after}`).expect(200);
        const page = bodyOf<{ items: { unitName: string; inService: boolean }[]; next: string | null }>(
          answer,
        );
        seen.push(...page.items.map(({ unitName }) => unitName));
        expect(page.items.every(({ inService }) => inService)).toBe(true);
        after = page.next === null ? '' : `&after=${page.next}`;
      } while (after !== '');
      return seen;
    };
    const inUse = await names('');
    expect(new Set(inUse).size).toBe(inUse.length);
    expect(inUse.filter((name) => /kayak/i.test(name))).toEqual(['kayak 9', 'Kayak 10', 'Kayak 100']);
    const all = await names('&retired=yes');
    expect(all.length).toBeGreaterThan(inUse.length);
    expect(all.filter((name) => name === 'PWC 800')).toHaveLength(2);
  });

  it.each([['limit=0'], ['after=nonsense'], ['retired=maybe'], ['colour=red']])(
    'refuse the query %s',
    async (query) => {
      const refused = await server.get(`/api/craft?${query}`).expect(422);
      expect(bodyOf(refused)['source']).toBe('query');
    },
  );

  it('are found by the words of a caller', async () => {
    const { id } = await aCraft({ unitName: 'Pontoon 77', type: 'pontoon-boat', colours: ['teal'] });
    for (const words of ['help, pontoon 77!', 'the teal one']) {
      const found = await server.get(`/api/craft/matches?words=${encodeURIComponent(words)}`).expect(200);
      expect(found.body).toMatchObject({
        items: [{ craft: { id, unitName: 'Pontoon 77', inService: true } }],
      });
    }
    expect((await server.get('/api/craft/matches?words=zzz')).body).toEqual({ items: [] });
    await server.get('/api/craft/matches').expect(422);
    await server.get('/api/craft/matches?words=a&words=b').expect(422);
  });
  it('says what was written down of a craft by an instant', async () => {
    const { id, unitName } = await aCraft({ hullNumber: 'ABC12345D404' });
    const between = server.clock.now();
    await server.put(`/api/craft/${id}`, { ...PWC, unitName, hullNumber: 'ABC12345D494' }, '"1"').expect(200);
    expect(await server.fleet.craftAsOf(id, between)).toMatchObject({ hullNumber: 'ABC12345D404' });
    expect(await server.fleet.craftAsOf(id, server.clock.now())).toMatchObject({
      hullNumber: 'ABC12345D494',
    });
    expect(await server.fleet.craftAsOf(id, '2020-01-01T00:00:00.000Z')).toBeNull();
  });

  it('changes nothing when many change one craft at once but the first', async () => {
    const { id, unitName } = await aCraft();
    const answers = await Promise.all(
      Array.from({ length: 8 }, (_, place) =>
        server.put(`/api/craft/${id}`, { ...PWC, unitName, make: `Make ${place}` }, '"1"'),
      ),
    );
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 412, 412, 412, 412, 412, 412, 412]);
    const rows = await desk.plainSql('SELECT version FROM kept_version WHERE thing_id = $1', [id]);
    expect(rows).toHaveLength(2);
  });
});
