import { randomUUID } from 'node:crypto';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '../../src/server/accounts/accounts.api.js';
import { createApp } from '../../src/server/create-app.js';
import { Determinations } from '../../src/server/determination/determination.api.js';
import { refuse } from '../../src/server/platform/http/refuse.js';
import { IncidentsService } from '../../src/server/record/record.api.js';
import { type Browser, create, describeHouse } from '../accounts/house.js';
import { configOf, openApp } from '../support/app.js';
import { ENGINES } from '../support/databases.js';

const told = <T>(value: T) => ({ value, known: 'told' });
const UNHURT = {
  assessment: told('complete'),
  people: [{ id: 'p', role: told('operator'), outcome: told('unhurt'), care: told('none') }],
};
const TEXAS = {
  occurred: told({ at: '2026-06-13T11:00:00-05:00', precision: 'about' }),
  states: told(['TX']),
};

const MANAGER: Actor = {
  kind: 'person',
  accountId: 'account-max',
  personName: 'Max',
  role: 'manager',
  sessionId: 'session',
};

interface Kept {
  version: number;
  amendment: number;
  packs: { jurisdiction: string; sha256: string }[];
  determination: { duties: { id: string; outcome: string }[] };
}

describeHouse('determinations that are kept', (house) => {
  let manager: Browser;
  beforeAll(async () => {
    manager = await house().signedIn('manager');
  });

  const opened = async (): Promise<string> => {
    const answer = await create(manager, '/api/incidents', { call: { said: 'help, PWC 7' } }).expect(201);
    return (answer.body as { id: string }).id;
  };
  const write = (id: string, section: string, version: number, document: object) =>
    manager
      .put(`/api/incidents/${id}/sections/${section}`)
      .set('If-Match', `"${version}"`)
      .send({ document });
  const current = async (id: string): Promise<Kept> =>
    (await manager.get(`/api/incidents/${id}/determination`).expect(200)).body as Kept;

  it('begin with the call, which is never "not required"', async () => {
    const kept = await current(await opened());
    expect(kept.version).toBe(1);
    expect(kept.determination.duties.map(({ outcome }) => outcome)).not.toContain('not-required');
    expect(kept.packs.map(({ jurisdiction }) => jurisdiction)).toContain('US');
  });

  it('are superseded when facts change, each as it was made with the facts it rested on', async () => {
    const id = await opened();
    const first = await current(id);
    await write(id, 'time-and-place', 0, TEXAS).expect(200);
    await write(id, 'people', 0, UNHURT).expect(200);
    const third = await current(id);
    expect([first.version, third.version]).toEqual([1, 3]);
    expect(third.amendment).toBeGreaterThan(first.amendment);
    expect(third.packs.map(({ jurisdiction }) => jurisdiction)).toEqual(['US', 'TX']);
    expect((await manager.get(`/api/incidents/${id}/determinations/1`)).body).toEqual(
      expect.objectContaining({ version: 1, determination: first.determination }),
    );
    const answer = await manager.get(`/api/incidents/${id}/determinations?limit=2`).expect(200);
    expect((answer.body as { items: { sequence: number }[] }).items.map(({ sequence }) => sequence)).toEqual([
      3, 2,
    ]);
    await manager.get(`/api/incidents/${id}/determinations/4`).expect(404);
    await manager.get(`/api/incidents/${id}/determinations/1e0`).expect(404);
  });

  it('are not made anew by words that bear on no fact', async () => {
    const id = await opened();
    await write(id, 'conditions', 0, { visibility: told('good') }).expect(200);
    expect((await current(id)).version).toBe(1);
  });

  it('are lost together with a change that is refused', async () => {
    const id = await opened();
    house()
      .app.get(Determinations)
      .onChange(async ({ after }) => {
        await Promise.resolve();
        if (after.facts.people.some(({ id: person }) => person === 'refused')) refuse(409, 'No.');
      });
    const people = { people: [{ id: 'refused', outcome: told('injured') }] };
    await write(id, 'people', 0, people).expect(409);
    expect((await current(id)).version).toBe(1);
    expect((await manager.get(`/api/incidents/${id}/sections/people`)).body).toMatchObject({ version: 0 });
  });

  it('are read by counsel of the incident alone, and by nobody on a device', async () => {
    const id = await opened();
    const counsel = await house().signedIn('counsel');
    await counsel.get(`/api/incidents/${id}/determination`).expect(404);
  });
});

describe.each(ENGINES)('a corrected pack (%s)', (engine) => {
  // Of a call without a place any state may be the one.
  it.each(['US', 'TX', 'MD'])(
    'of %s has every incident determined under it at the next start, once',
    async (code) => {
      const { app, database, close } = await openApp(engine);
      const folder = mkdtempSync(join(tmpdir(), 'desk-packs-'));
      try {
        const { id } = await app
          .get(IncidentsService)
          .open({ call: { said: 'help' } }, randomUUID(), MANAGER);
        const before = await app.get(Determinations).current(id);
        cpSync('forms/law', folder, { recursive: true });
        const file = join(folder, `${code.toLowerCase()}.json`);
        const pack = JSON.parse(readFileSync(file, 'utf8')) as { doubts: string[] };
        writeFileSync(file, JSON.stringify({ ...pack, doubts: [...pack.doubts, 'Read again.'] }));
        for (let start = 0; start < 2; start += 1) {
          const again = await createApp({ ...configOf(database, folder), rulePacksDir: folder });
          const after = await again.get(Determinations).current(id);
          await again.close();
          expect(after?.sequence).toBe(2);
          const textOf = (kept: typeof before) =>
            kept?.packs.find(({ jurisdiction }) => jurisdiction === code);
          expect(textOf(before)?.sha256).toMatch(/^[\da-f]{64}$/);
          expect(textOf(after)?.sha256).not.toBe(textOf(before)?.sha256);
        }
      } finally {
        await close();
        rmSync(folder, { recursive: true, force: true });
      }
    },
  );
});
