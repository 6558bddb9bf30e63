import { randomUUID } from 'node:crypto';
import { beforeAll, expect, it } from 'vitest';
import { UnitOfWork } from '../../src/server/platform/database/unit-of-work.js';
import { RecordSettings } from '../../src/server/record/record.api.js';
import { verifyRecord } from '../../src/server/record/verify-record.js';
import { describeHouse, PASSWORD } from '../accounts/house.js';

const COUNT = 100;
const places = Array.from({ length: COUNT }, (_, place) => place);
/** So often a client sends again what the desk was too busy to take. */
const TRIES = 6;

interface Answer {
  readonly status: number;
  readonly body: Record<string, unknown>;
}

describeHouse('a burst of 200 creates and edits through the whole service', (house) => {
  let cookie = '';
  beforeAll(async () => {
    const { signInName } = await house().person('manager');
    const answer = await send('POST', '/api/session', { signInName, password: PASSWORD });
    expect(answer.status).toBe(200);
  });

  const once = async (method: 'GET' | 'POST' | 'PUT', url: string, body?: object, headers: object = {}) => {
    const answer = await house().app.inject({
      method,
      url,
      headers: { cookie, ...headers },
      ...(body && { payload: body }),
    });
    const [session] = answer.cookies;
    if (session !== undefined) cookie = `${session.name}=${session.value}`;
    return { status: answer.statusCode, body: JSON.parse(answer.body || '{}') as Record<string, unknown> };
  };

  /** A busy desk answers 503 and has written nothing; a client sends the same again. */
  async function send(...request: Parameters<typeof once>): Promise<Answer> {
    for (let tried = 1; ; tried += 1) {
      const answer = await once(...request);
      if (answer.status !== 503 || tried === TRIES) return answer;
    }
  }
  const open = (call: object, key: string) =>
    send('POST', '/api/incidents', { call }, { 'idempotency-key': key });

  it('leaves exactly what was promised, and a record that proves itself', async () => {
    const shared = String((await open({ said: 'help' }, randomUUID())).body['id']);
    const section = (name: string) => `/api/incidents/${shared}/sections/${name}`;
    const opening = places.map((place) => {
      // Every third is refused, and every fifth is sent twice at once.
      const call = { said: `call ${place}`, ...(place % 3 === 2 && { card: 1 }) };
      const key = randomUUID();
      return Promise.all(place % 5 === 0 ? [open(call, key), open(call, key)] : [open(call, key)]);
    });
    const editing = places.map((place) => {
      if (place % 2 === 0) {
        const entries = [{ id: `e${place}`, what: `line ${place}` }];
        return send('POST', `${section('timeline')}/additions`, { entries });
      }
      // Half of the edits race for the first two versions of one section.
      const document = { whatHappened: { value: `words ${place}`, known: 'told' } };
      const headers = { 'if-match': `"${place % 4 === 1 ? 0 : 1}"` };
      return send('PUT', section('account'), { document, reason: 'burst' }, headers);
    });
    const opened = await Promise.all(opening);
    const edited = await Promise.all(editing);

    expect(opened.map(([first]) => first?.status)).toEqual(
      places.map((place) => (place % 3 === 2 ? 422 : 201)),
    );
    const ids = new Set(
      opened.flat().flatMap(({ status, body }) => (status === 201 ? [String(body['id'])] : [])),
    );
    const kept = (await house().plainSql('SELECT id, reference FROM incident')) as Record<string, string>[];
    expect(kept.map(({ id }) => id).sort()).toEqual([...ids, shared].sort());
    expect(new Set(kept.map(({ reference }) => reference)).size).toBe(kept.length);

    const added = places.filter((place) => place % 2 === 0 && edited[place]?.status === 200);
    expect(added).toHaveLength(COUNT / 2);
    const timeline = (await send('GET', section('timeline'))).body['document'] as {
      entries: { id: string }[];
    };
    expect(timeline.entries.map(({ id }) => id).sort()).toEqual(added.map((place) => `e${place}`).sort());
    const races = places.filter((place) => place % 2 === 1).map((place) => edited[place]?.status);
    expect(new Set(races)).toEqual(new Set([200, 412]));
    const { version } = (await send('GET', section('account'))).body;
    expect(version).toBe(races.filter((status) => status === 200).length);

    // Each has its determination and its tasks, made in the unit of work that made it.
    const of = (table: string) => house().plainSql(`SELECT COUNT(DISTINCT incident_id) AS n FROM ${table}`);
    for (const table of ['determination', 'duty_state', 'task']) {
      const [row] = (await of(table)) as { n: string | number }[];
      expect([table, Number(row?.n)]).toEqual([table, kept.length]);
    }
    const { headsFile } = house().app.get(RecordSettings);
    expect((await verifyRecord(house().app.get(UnitOfWork), headsFile)).faults).toEqual([]);
  }, 120_000);
});
