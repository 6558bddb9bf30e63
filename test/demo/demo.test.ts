import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createApp } from '../../src/server/create-app.js';
import { type DemoSignIn, loadDemo } from '../../src/server/demo/demo.api.js';
import { checkEvidence } from '../../src/server/evidence/evidence.api.js';
import type { Config } from '../../src/server/platform/config.js';
import { writingSource } from '../../src/server/platform/database/data-source.js';
import { checkRecord } from '../../src/server/record/record.api.js';
import type { Browser } from '../accounts/house.js';
import { configOf } from '../support/app.js';
import { cloneTemplate, type DatabaseClone } from '../support/database-clone.js';
import { ENGINES } from '../support/databases.js';

const FIXTURES = join(import.meta.dirname, '..', '..', 'fixtures', 'demo');

interface Duty {
  readonly duty: string;
  readonly vessel: string | null;
  readonly outcome: string;
  readonly state: string;
  readonly questions: readonly object[];
  readonly reopenings: readonly object[];
}

describe.each(ENGINES)('the demonstration (%s)', (engine) => {
  const folder = mkdtempSync(join(tmpdir(), 'desk-demo-'));
  let clone: DatabaseClone;
  let config: Config;
  let people: DemoSignIn[];
  let app: NestFastifyApplication;
  let manager: Browser;
  const progress: string[] = [];

  const signedIn = async (signInName: string): Promise<Browser> => {
    const browser = request.agent(app.getHttpServer());
    const password = people.find((one) => one.signInName === signInName)?.password;
    await browser.post('/api/session').send({ signInName, password }).expect(200);
    return browser;
  };
  beforeAll(async () => {
    clone = await cloneTemplate(engine);
    config = configOf(clone.target, folder);
    const filled = await createApp(config);
    const tell = (done: number, total: number): unknown => progress.push(`${done}/${total}`);
    people = await loadDemo(filled, { timeZone: config.timeZone, tell });
    await filled.close();
    app = await createApp(config);
    manager = await signedIn('ruth');
  });
  afterAll(async () => {
    await app.close();
    await clone.drop();
    rmSync(folder, { recursive: true, force: true });
  });

  const listed = async <T>(path: string): Promise<T[]> => {
    const answer = await manager.get(path).expect(200);
    return (answer.body as { items: T[] }).items;
  };
  /** By the words of the call, as references follow the times of loading. */
  const incidentOf = async (said: string): Promise<string> => {
    for (const { id } of await listed<{ id: string }>('/api/incidents?limit=50')) {
      const call = await manager.get(`/api/incidents/${id}/sections/call`).expect(200);
      if ((call.body as { document: { said?: string } }).document.said?.includes(said))
        return `/api/incidents/${id}`;
    }
    throw new Error(`No call says "${said}"`);
  };
  const dutiesOf = async (said: string): Promise<Duty[]> => listed<Duty>(`${await incidentOf(said)}/duties`);

  // Lake Texoma lies in two states; 33 CFR 173.55(b) gives 48 hours after an injury and 10 days after damage alone.
  it.each([
    ['just hit each other', 'us/accident-report', 'PWC-3', 'required', 'filed'],
    ['just hit each other', 'us/accident-report', 'PWC-4', 'required', 'filed'],
    ['stuck on the sandbar', 'us-tx/accident-report', 'PWC-1', 'not-required', 'decided'],
    ['cut my shin', 'us/accident-report', 'PWC-2', 'required', 'overdue'],
    ['pushed us into the fuel dock', 'us/accident-report', 'Pontoon-1', 'required', 'overdue'],
    ['pushed us into the fuel dock', 'us-tx/accident-report', 'Pontoon-1', 'required', 'open'],
    ['hit his shoulder', 'us/accident-report', 'PWC-6', 'undetermined', 'waiting'],
    ['hit his shoulder', 'us-ok/accident-report', 'PWC-6', 'undetermined', 'open'],
    ['both of us are holding on', 'us/accident-report', null, 'undetermined', 'overdue'],
    ['hanging on to an orange kayak', 'us/accident-report', 'Kayak-2', 'not-required', 'decided'],
    ['Gouge along the bottom', 'us/accident-report', 'PWC-5', 'undetermined', 'open'],
    ['nowhere to be seen', 'us/death-or-disappearance-notice', 'Kayak-3', 'undetermined', 'open'],
    ['line caught my hand', 'us-ok/accident-report', 'Pontoon-2', 'required', 'filed'],
    ['line caught my hand', 'us/workplace-injury-report', null, 'required', 'filed'],
    ['swimming behind the boat', 'us/death-or-disappearance-notice', 'Pontoon-1', 'required', 'filed'],
    ['swimming behind the boat', 'us/accident-report', 'Pontoon-1', 'required', 'supplement-due'],
    ['hurt my back', 'us-tx/accident-report', 'PWC-1', 'required', 'overdue'],
    ['touched a stump', 'us-ok/accident-report', 'PWC-5', 'not-required', 'decided'],
  ])('shows, where they said "%s", %s of %s: %s, %s', async (said, duty, vessel, outcome, state) => {
    const found = (await dutiesOf(said)).find((one) => one.duty === duty && one.vessel === vessel);
    expect(found).toMatchObject({ outcome, state });
    if (outcome === 'undetermined') expect(found?.questions).not.toEqual([]);
  });

  it('has a decision that late facts reopened, two calls joined, a claim whose clock runs, and a hold', async () => {
    const [reopened] = await dutiesOf('cut my shin');
    expect(reopened?.reopenings).toHaveLength(1);
    const joined = await manager
      .get(`${await incidentOf('hanging on to an orange kayak')}/record`)
      .expect(200);
    const { sections } = joined.body as {
      sections: { section: string; document: { sameEventAs?: string[] } }[];
    };
    expect(sections.find(({ section }) => section === 'incident')?.document.sameEventAs).toHaveLength(1);
    const richest = await incidentOf('just hit each other');
    expect((await listed(`${richest}/claims-clocks`)).length).toBeGreaterThan(0);
    const held = await manager.get(`${richest}/holds`).expect(200);
    expect(held.body).toMatchObject({ held: true });
    const [letter] = await listed<{ id: string }>(`${richest}/requests`);
    expect(letter).toMatchObject({ kind: 'preservation-letter', status: 'open', overdue: false });
    expect(JSON.stringify(held.body)).toContain(letter?.id);
    const kept = await manager.get(`${richest}/evidence`).expect(200);
    expect((kept.body as { files: object[] }).files).toHaveLength(5);
  });

  it('happened at its own times, in the order of the log, and is proven by it', async () => {
    const opened = (await listed<{ openedAt: string }>('/api/incidents?limit=50')).map(
      ({ openedAt }) => openedAt,
    );
    expect([...opened].sort().reverse()).toEqual(opened);
    expect(Date.now() - Date.parse(opened.at(-1) ?? '')).toBeGreaterThan(40 * 86_400_000);
    const { target } = clone;
    const environment = {
      DATABASE_URL: target.engine === 'sqlite' ? `sqlite:${target.file}` : target.url,
      RECORD_HEADS_FILE: config.recordHeadsFile,
      EVIDENCE_FOLDER: config.evidence.folder,
    };
    expect((await checkRecord(environment)).faults).toEqual([]);
    expect(await checkEvidence(environment)).toMatchObject({ files: 6, faults: [] });
  });

  it('lets each of its people sign in, and keeps their passwords nowhere', async () => {
    for (const { signInName, role } of people) {
      const me = await (await signedIn(signInName)).get('/api/session').expect(200);
      expect(me.body).toMatchObject({ signInName, role, passwordDue: false });
    }
    expect(new Set(people.map(({ role }) => role)).size).toBe(4);
    const source = await writingSource(clone.target, {}).initialize();
    const rows = JSON.stringify(await source.query('SELECT * FROM account'));
    await source.destroy();
    for (const { password } of people) expect(rows).not.toContain(password);
    const [last = ''] = progress.slice(-1);
    expect(last.split('/')[0]).toBe(last.split('/')[1]);
  });
});

describe('the data of the demonstration', () => {
  const files = readdirSync(FIXTURES, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.json'),
  );
  const text = files.map((name) => readFileSync(join(FIXTURES, name), 'utf8')).join('\n');

  // 555-01xx is set apart for invented numbers; example.com for invented addresses (RFC 2606).
  it('has no number and no address that could be somebody’s', () => {
    for (const [number] of text.matchAll(/\b\d{3}-\d{3}-\d{4}\b/g)) expect(number).toMatch(/-555-01\d\d$/);
    for (const [, domain] of text.matchAll(/\w@([\w.]+\w)/g)) expect(domain).toBe('example.com');
  });
});
