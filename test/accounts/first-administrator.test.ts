import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openAccountDesk } from '../../src/server/accounts/accounts.api.js';
import { cloneTemplate, type DatabaseClone } from '../support/database-clone.js';
import { ENGINES } from '../support/databases.js';
import { failToStart, startServer } from '../support/start-server.js';
import { PASSWORD } from './house.js';

const COMMAND = join(import.meta.dirname, '..', '..', 'dist', 'src', 'cli', 'account.js');

const signIn = async (url: string, signInName: string, password: string): Promise<[number, unknown]> => {
  const answer = await fetch(`${url}/api/session`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ signInName, password }),
  });
  return [answer.status, await answer.json()];
};

function run(words: string[], url: string): Promise<{ status: number; stdout: string; stderr: string }> {
  return new Promise((resolve) => {
    const env = { ...process.env, DATABASE_URL: url };
    execFile(process.execPath, [COMMAND, ...words], { env }, (error, stdout, stderr) => {
      resolve({ status: error === null ? 0 : Number(error.code), stdout, stderr });
    });
  });
}

describe('the first start', () => {
  let folder: string;
  let url: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'first-'));
    url = `sqlite:${join(folder, 'desk.sqlite')}`;
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('without an account serves what is public, and says how to make the first administrator', async () => {
    const server = await startServer();
    expect((await fetch(`${server.url}/api/law/TX`)).status).toBe(200);
    expect((await fetch(`${server.url}/api/accounts`)).status).toBe(401);
    expect(await server.stop()).toBe(0);
    expect(server.said()).toContain('npm run -s account -- create --role administrator');
  });

  it('refuses a password that nobody may have, and does not repeat it', async () => {
    const { status, stderr } = await failToStart({
      FIRST_ADMIN_NAME: 'ana',
      FIRST_ADMIN_PASSWORD: 'swordfish',
    });
    expect([status, stderr]).toEqual([
      1,
      expect.stringContaining('FIRST_ADMIN_PASSWORD: Must have at least 15'),
    ]);
    expect(stderr).not.toContain('swordfish');
  });

  it('makes the administrator whom the environment names, once and never again', async () => {
    const environment = { DATABASE_URL: url, FIRST_ADMIN_NAME: 'Ana', FIRST_ADMIN_PASSWORD: PASSWORD };
    const first = await startServer(environment);
    expect(await signIn(first.url, 'ana', PASSWORD)).toMatchObject([200, { role: 'administrator' }]);
    expect(await first.stop()).toBe(0);
    const other = 'another sentence altogether';
    const second = await startServer({
      ...environment,
      FIRST_ADMIN_NAME: 'Eve',
      FIRST_ADMIN_PASSWORD: other,
    });
    expect((await signIn(second.url, 'eve', other))[0]).toBe(401);
    expect(await second.stop()).toBe(0);
  });

  it('is helped by the command, also while the service runs', async () => {
    const server = await startServer({ DATABASE_URL: url });
    const made = await run(['create', '--sign-in', 'ben', '--name', 'Ben Okoro', '--role', 'manager'], url);
    const password = /One-time password: +(\S+)/.exec(made.stdout)?.[1] ?? '';
    expect([made.status, made.stderr]).toEqual([0, '']);
    const answer = await signIn(server.url, 'ben', password);
    expect(await server.stop()).toBe(0);
    expect(answer).toMatchObject([200, { role: 'manager', passwordDue: true }]);
  });

  it.each([
    [[], 'makes an account'],
    [['delete'], 'makes an account'],
    [['create', '--sign-in', 'x', '--role', 'boss'], '/name Missing: give the name'],
    [
      ['create', '--sign-in', 'ANA', '--name', 'x', '--role', 'staff'],
      'Another account has that sign-in name.',
    ],
    [['reset', '--sign-in', 'nobody'], 'Nobody has that sign-in name.'],
    [['create', '--colour', 'red'], '--colour'],
  ])('the command refuses %j with status 2', async (words, said) => {
    const { status, stdout, stderr } = await run(words, url);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toContain(said);
  });
});

describe.each(ENGINES)('the desk of accounts (%s)', (engine) => {
  let clone: DatabaseClone;
  beforeAll(async () => {
    clone = await cloneTemplate(engine);
  });
  afterAll(() => clone.drop());

  it('makes accounts and lets back in whoever lost the password', async () => {
    const { target } = clone;
    const desk = await openAccountDesk({
      DATABASE_URL: target.engine === 'sqlite' ? `sqlite:${target.file}` : target.url,
    });
    const made = await desk.create({ name: 'Ana Ruiz', signInName: 'ana', role: 'administrator' });
    const reset = await desk.resetPassword(' ANA ');
    await desk.close();
    expect(made).toMatchObject({ role: 'administrator', passwordDue: true, version: 1 });
    expect(reset).toMatchObject({ id: made.id, version: 2 });
    expect(reset.oneTimePassword).not.toBe(made.oneTimePassword);
  });
});
