import { randomUUID } from 'node:crypto';
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { expect, it } from 'vitest';
import { describeEngines } from '../support/databases.js';
import { DOCK_PHONE, person, RECORD } from './record-app.js';
import { Client } from './record-desk.js';

const staff = person('staff', 'Ann');
const COUNT = 100;
const places = Array.from({ length: COUNT }, (_, place) => place);
const statusOf = ({ status }: { status: number }): number => status;

describeEngines('a burst of 200 creates and edits', RECORD, (desk) => {
  const client = new Client(desk);

  it('leaves exactly what was promised', async () => {
    const shared = await client.opened(staff);
    // Every third create is refused, and every fifth is sent twice at once.
    const opening = places.map((place) => {
      const said = `call number ${place}`;
      const call = place % 3 === 2 ? { said, card: 1 } : { said };
      const key = randomUUID();
      const send = () => client.open(DOCK_PHONE, { call }, key);
      return Promise.all(place % 5 === 0 ? [send(), send()] : [send()]);
    });
    // Half of the edits add to one section, the other half race for the first two versions of another.
    const editing = places.map((place) => {
      const what = `line ${place}`;
      if (place % 2 === 0) {
        const path = `/${shared}/sections/timeline/additions`;
        return client.send(DOCK_PHONE, 'POST', path, { entries: [{ id: `e${place}`, what }] });
      }
      const edit = { document: { whatHappened: { value: what, known: 'told' } }, reason: 'burst' };
      return client.write(staff, `/${shared}/sections/account`, edit, place % 4 === 1 ? 0 : 1);
    });
    const [opened, edited] = await Promise.all([Promise.all(opening), Promise.all(editing)]);

    expect(opened.map(([first]) => first?.status)).toEqual(
      places.map((place) => (place % 3 === 2 ? 422 : 201)),
    );
    const ids = opened
      .flat()
      .filter(({ status }) => status === 201)
      .map(({ body }) => String(body['id']));
    const kept = await desk.plainSql('SELECT id, reference FROM incident');
    expect(kept.map((row) => row['id']).sort()).toEqual([...new Set([...ids, shared])].sort());
    expect(new Set(kept.map((row) => row['reference'])).size).toBe(kept.length);

    const [additions, races] = [0, 1].map((half) => edited.filter((_, place) => place % 2 === half));
    expect(new Set(additions?.map(statusOf))).toEqual(new Set([200]));
    const { body } = await client.get(staff, `/${shared}/sections/timeline`);
    const { entries } = body['document'] as { entries: { id: string }[] };
    expect(entries.map(({ id }) => id).sort()).toEqual(
      places
        .filter((place) => place % 2 === 0)
        .map((place) => `e${place}`)
        .sort(),
    );
    const won = races?.filter(({ status }) => status === 200) ?? [];
    expect(new Set(races?.map(statusOf))).toEqual(new Set([200, 412]));
    const account = await client.get(staff, `/${shared}/sections/account`);
    expect(account.body['version']).toBe(won.length);
    expect(await client.check()).toEqual([]);
  });
});

const RUN = join(import.meta.dirname, '..', 'support', 'run-typescript.mjs');
const ENOUGH = 60;
/** Starting the other process takes seconds on a busy machine. */
const PATIENCE_MS = 120_000;

/** What the service acknowledged, up to the last that left it before it was killed in its burst. */
async function killAfter(enough: number, target: unknown, headsFile: string): Promise<string[]> {
  const service = spawn(
    process.execPath,
    [RUN, '/test/record/burst-service.ts', JSON.stringify(target), headsFile],
    { stdio: ['ignore', 'pipe', 'inherit'] },
  );
  const acknowledged: string[] = [];
  const closed = once(service, 'close');
  for await (const line of createInterface(service.stdout)) {
    acknowledged.push(line);
    if (acknowledged.length === enough) service.kill('SIGKILL');
  }
  expect(await closed).toEqual([null, 'SIGKILL']);
  return acknowledged;
}

describeEngines('a service killed in a burst', RECORD, (desk) => {
  const client = new Client(desk);

  it(
    'has lost nothing that it acknowledged, and the record proves itself',
    async () => {
      const acknowledged = await killAfter(ENOUGH, desk.target, client.headsFile);
      expect(acknowledged.length).toBeGreaterThanOrEqual(ENOUGH);
      for (const line of acknowledged) {
        const [id, said] = line.split(' ');
        const { body } = await client.get(staff, `/${String(id)}/sections/call`);
        expect(body).toMatchObject({ version: 2, document: { said } });
      }
      expect(await client.check()).toEqual([]);
    },
    PATIENCE_MS,
  );
});
