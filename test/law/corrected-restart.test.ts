import { randomUUID } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Duty } from '../../shared/determination/determination.js';
import type { RulePack } from '../../shared/law/rule-pack.js';
import { openAccountDesk } from '../../src/server/accounts/accounts.api.js';
import { quietSections, told } from '../decision/incident-case.js';
import { cloneTemplate, type DatabaseClone } from '../support/database-clone.js';
import { startServer, type RunningServer } from '../support/start-server.js';

const PASSWORD = 'three herons on a pier';
const TEXAS = 'us-tx/accident-report';

interface Kept {
  version: number;
  packs: { jurisdiction: string; sha256: string }[];
  determination: { duties: Duty[] };
}

let folder = '';
let clone: DatabaseClone;
let environment: Record<string, string> = {};
let password = '';
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'desk-corrected-'));
  clone = await cloneTemplate('sqlite');
  environment = {
    DATABASE_URL: clone.target.engine === 'sqlite' ? `sqlite:${clone.target.file}` : clone.target.url,
    LAW_CORRECTIONS_DIR: join(folder, 'law-corrections'),
    RECORD_HEADS_FILE: join(folder, 'heads'),
    EVIDENCE_FOLDER: join(folder, 'evidence'),
    MAIL_FOLDER: join(folder, 'mail'),
    BUSINESS_TIME_ZONE: 'America/Chicago',
  };
  const desk = await openAccountDesk(environment);
  password =
    (await desk.create({ signInName: 'max', name: 'Max Ruiz', role: 'manager' })).oneTimePassword ?? '';
  await desk.close();
});
afterAll(async () => {
  await clone.drop();
  rmSync(folder, { recursive: true, force: true });
});

/** What a started service says until it is stopped again, to somebody who signed in there. */
async function during<T>(work: (send: Send) => Promise<T>): Promise<T> {
  const server = await startServer(environment);
  try {
    const signIn = await send(server, '', 'POST', '/api/session', { signInName: 'max', password });
    const [cookie = ''] = (signIn.headers.getSetCookie()[0] ?? '').split(';');
    return await work(async (...request) => (await send(server, cookie, ...request)).json());
  } finally {
    expect(await server.stop()).toBe(0);
  }
}

type Request = [method: string, path: string, body?: object, headers?: Record<string, string>];
type Send = (...request: Request) => Promise<unknown>;

async function send({ url }: RunningServer, cookie: string, ...request: Request): Promise<Response> {
  const [method, path, body, headers] = request;
  const answer = await fetch(`${url}${path}`, {
    method,
    headers: { 'content-type': 'application/json', cookie, ...headers },
    ...(body && { body: JSON.stringify(body) }),
  });
  if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
  return answer.status === 204 ? Response.json(null) : answer;
}

/** A grounding on Lake Texoma with 3000 dollars of damage: over the 2000 of the pack, under the 5000 of the correction. */
async function write(send: Send): Promise<string> {
  await send('PUT', '/api/session/password', { currentPassword: password, newPassword: PASSWORD });
  password = PASSWORD;
  const key = { 'idempotency-key': randomUUID() };
  const { id } = (await send('POST', '/api/incidents', { call: { said: 'Hit the bottom.' } }, key)) as {
    id: string;
  };
  const line = { id: 'd1', of: told('vessel'), craft: 'PWC-7', amount: told(3000), basis: told('invoice') };
  const sections = {
    ...quietSections('2026-06-13T11:20:00-05:00'),
    damage: { assessment: told('complete'), lines: [line] },
  };
  for (const [section, document] of Object.entries(sections)) {
    await send('PUT', `/api/incidents/${id}/sections/${section}`, { document }, { 'if-match': '"0"' });
  }
  return id;
}

const texasOf = ({ determination }: Kept): Duty =>
  determination.duties.find(({ id }) => id === TEXAS) ?? expect.unreachable('Texas has a report of its own');
const textOf = ({ packs }: Kept) => packs.find(({ jurisdiction }) => jurisdiction === 'TX')?.sha256;

it('a correction that is laid beside the packs decides from the next start on, and no longer once it is taken away', async () => {
  const shipped = readFileSync('forms/law/tx.json', 'utf8');
  const { report } = JSON.parse(shipped) as RulePack;
  const index = report?.triggers.findIndex(({ test }) => test === 'damage-total');
  const citation = 'Tex. Parks & Wild. Code 31.105(a)';

  const { id, before } = await during(async (send) => {
    const made = await write(send);
    return { id: made, before: (await send('GET', `/api/incidents/${made}/determination`)) as Kept };
  });
  expect(texasOf(before).outcome).toBe('required');

  mkdirSync(join(folder, 'law-corrections'));
  const correction = {
    pack: 'TX',
    on: '2026-12-01',
    by: 'Ana Ruiz',
    citation,
    note: 'The commission set 5000 dollars.',
    changes: [{ pointer: `/report/triggers/${index}/readings/0/amountUsd`, from: 2000, to: 5000 }],
  };
  writeFileSync(join(folder, 'law-corrections', 'texas.json'), JSON.stringify(correction));
  const now = `/api/incidents/${id}/determination`;
  const earlier = `${now}s/${before.version}`;
  await during(async (send) => {
    const after = (await send('GET', now)) as Kept;
    expect(after.version).toBe(before.version + 1);
    expect(texasOf(after).outcome).not.toBe('required');
    expect(texasOf(after).reasons).toContainEqual({
      trigger: 'law/correction',
      value: 'true',
      text: 'Corrected here on 2026-12-01 by Ana Ruiz: The commission set 5000 dollars.',
      citation,
    });
    expect(textOf(after)).not.toBe(textOf(before));
    expect(await send('GET', earlier)).toMatchObject({
      packs: before.packs,
      determination: before.determination,
    });
    const { corrections } = (await send('GET', '/api/law/TX')) as RulePack;
    expect(corrections).toEqual([{ on: '2026-12-01', by: 'Ana Ruiz', citation, note: correction.note }]);
  });
  expect(readFileSync('forms/law/tx.json', 'utf8')).toBe(shipped);

  rmSync(join(folder, 'law-corrections'), { recursive: true });
  await during(async (send) => {
    const after = (await send('GET', now)) as Kept;
    expect([after.version, texasOf(after).outcome]).toEqual([before.version + 2, 'required']);
    expect(textOf(after)).toBe(textOf(before));
  });
}, 120_000);
