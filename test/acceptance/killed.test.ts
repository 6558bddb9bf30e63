import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openAccountDesk } from '../../src/server/accounts/accounts.api.js';
import { cloneTemplate, type DatabaseClone } from '../support/database-clone.js';
import { ENGINES } from '../support/databases.js';
import { type RunningServer, startServer } from '../support/start-server.js';
import { spawnSync } from 'node:child_process';

const ENOUGH = 40;
const WRITERS = 8;
const PASSWORD = 'three herons on a pier';

/** One client of the running service. */
class Client {
  private cookie = '';

  constructor(private readonly server: RunningServer) {}

  async signIn(password: string): Promise<void> {
    const answer = await this.send('POST', '/api/session', { signInName: 'max', password });
    const [session = ''] = answer.headers.getSetCookie();
    this.cookie = session.split(';')[0] ?? '';
  }

  async send(method: string, path: string, body?: object, headers: Record<string, string> = {}) {
    const answer = await fetch(`${this.server.url}${path}`, {
      method,
      headers: { 'content-type': 'application/json', cookie: this.cookie, ...headers },
      ...(body && { body: JSON.stringify(body) }),
    });
    if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status}`);
    return answer;
  }
}

describe.each(ENGINES)('the whole service, killed in a burst (%s)', (engine) => {
  let folder = '';
  let clone: DatabaseClone;
  let environment: Record<string, string> = {};
  let password = '';
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'desk-killed-'));
    clone = await cloneTemplate(engine);
    const { target } = clone;
    environment = {
      DATABASE_URL: target.engine === 'sqlite' ? `sqlite:${target.file}` : target.url,
      RECORD_HEADS_FILE: join(folder, 'heads'),
      EVIDENCE_FOLDER: join(folder, 'evidence'),
      MAIL_FOLDER: join(folder, 'mail'),
      BUSINESS_TIME_ZONE: 'America/Chicago',
      DEMO: 'no',
    };
    const desk = await openAccountDesk(environment);
    const made = await desk.create({ signInName: 'max', name: 'Max Ruiz', role: 'manager' });
    password = made.oneTimePassword ?? '';
    await desk.close();
  });
  afterAll(async () => {
    await clone.drop();
    rmSync(folder, { recursive: true, force: true });
  });

  it('has lost nothing that it acknowledged, and the record proves itself', async () => {
    const server = await startServer(environment);
    const client = new Client(server);
    await client.signIn(password);
    await client.send('PUT', '/api/session/password', { currentPassword: password, newPassword: PASSWORD });
    await client.signIn(PASSWORD);
    const acknowledged = new Map<string, string>();
    const write = async (writer: number): Promise<void> => {
      for (let n = 1; ; n += 1) {
        const said = `call ${writer} ${n}`;
        const key = { 'idempotency-key': randomUUID() };
        const answer = await client.send('POST', '/api/incidents', { call: { said } }, key);
        acknowledged.set(((await answer.json()) as { id: string }).id, said);
        if (acknowledged.size === ENOUGH) server.process.kill('SIGKILL');
      }
    };
    const ended = await Promise.allSettled(Array.from({ length: WRITERS }, (_, writer) => write(writer)));
    expect(ended.map(({ status }) => status)).toEqual(ended.map(() => 'rejected'));
    expect(acknowledged.size).toBeGreaterThanOrEqual(ENOUGH);

    const again = await startServer(environment);
    const reader = new Client(again);
    await reader.signIn(PASSWORD);
    for (const [id, said] of acknowledged) {
      const answer = await reader.send('GET', `/api/incidents/${id}/sections/call`);
      expect(await answer.json()).toMatchObject({ document: { said } });
    }
    expect(await again.stop()).toBe(0);
    const { status, stdout } = spawnSync(process.execPath, ['dist/src/cli/verify.js'], {
      encoding: 'utf8',
      env: { ...process.env, ...environment },
    });
    expect([status, stdout]).toEqual([0, expect.stringMatching(/all as written\.\n$/)]);
  }, 120_000);
});
