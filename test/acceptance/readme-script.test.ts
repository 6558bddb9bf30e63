import { execFile } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { readSheet } from 'read-excel-file/node';
import request from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningServer, startServer } from '../support/start-server.js';

const ROOT = join(import.meta.dirname, '..', '..');
const PASSWORD = 'three herons on a pier';

/** The script as a reader of the README copies it. */
function scriptOfReadme(): string {
  const chapter = readFileSync(join(ROOT, 'README.md'), 'utf8').split(
    '## From the call to the end, over HTTP',
  )[1];
  const script = /```sh\n(.*?)```/s.exec(chapter ?? '')?.[1];
  if (script === undefined) throw new Error('The README has no script from the call to the end.');
  return script;
}

describe('the script of the README, sent twice', () => {
  const folder = mkdtempSync(join(tmpdir(), 'desk-readme-'));
  const script = join(folder, 'call-to-closed.sh');
  const register = join(folder, 'register.xlsx');
  const said: string[] = [];
  let server: RunningServer;
  let manager: ReturnType<typeof request.agent>;

  beforeAll(async () => {
    writeFileSync(script, scriptOfReadme());
    server = await startServer({
      MAIL_FOLDER: join(folder, 'mail'),
      FIRST_ADMIN_NAME: 'ana',
      FIRST_ADMIN_PASSWORD: PASSWORD,
    });
    const env = { ...process.env, DESK: server.url, SIGN_IN: 'ana', PASSWORD, REGISTER: register };
    for (const round of ['once', 'twice']) {
      const { stdout } = await promisify(execFile)('sh', [script], { cwd: ROOT, env });
      said.push(`${round}\n${stdout}`);
    }
    manager = request.agent(server.url);
    await manager.post('/api/session').send({ signInName: 'ana', password: PASSWORD }).expect(200);
  });
  afterAll(async () => {
    await server.stop();
    rmSync(folder, { recursive: true });
  });

  const listed = async (path: string): Promise<Record<string, unknown>[]> => {
    const answer = await manager.get(path).expect(200);
    return (answer.body as { items: Record<string, unknown>[] }).items;
  };
  const incident = async (): Promise<string> =>
    `/api/incidents/${String((await listed('/api/incidents'))[0]?.['id'])}`;

  it('takes one incident from the call to closed, and the second time finds it closed', async () => {
    expect((await listed('/api/incidents')).map(({ status }) => status)).toEqual(['closed']);
    for (const round of said) expect(round).toMatch(/Incident \d{4}-0001 is closed\.\n$/);
    expect(said[0]).toContain(
      'Signed no-report on us-tx/accident-report\nSigned report on us/accident-report',
    );
    expect(said[1]).not.toContain('Signed');
  });

  it('signs, files and tells the operator once each', async () => {
    const decisions = await listed(`${await incident()}/decisions`);
    expect(decisions.map(({ duty, kind }) => `${String(duty)} ${String(kind)}`)).toEqual([
      'us/accident-report no-report',
      'us/death-or-disappearance-notice no-report',
      'us-tx/accident-report no-report',
      'us/accident-report report',
      'us-tx/accident-report report',
    ]);
    expect(await listed(`${await incident()}/filings`)).toHaveLength(1);
    expect(await listed(`${await incident()}/operator-notices`)).toHaveLength(1);
  });

  it('leaves no duty and no task open', async () => {
    const duties = await listed(`${await incident()}/duties`);
    expect(duties.map(({ state }) => state)).toEqual(['filed', 'decided', 'filed']);
    const tasks = await listed(`${await incident()}/tasks`);
    expect(tasks.length).toBeGreaterThan(5);
    expect(tasks.filter(({ state }) => state === 'open')).toEqual([]);
  });

  it('has the one mail about what was reopened on disk, without a word of what happened', () => {
    const mails = readdirSync(join(folder, 'mail')).filter((name) => name.endsWith('.eml'));
    expect(mails).toHaveLength(1);
    const mail = readFileSync(join(folder, 'mail', mails[0] ?? ''), 'utf8');
    expect(mail).toContain('desk@example.com');
    expect(mail).not.toMatch(/sandbar|stitch|injur/i);
  });

  it('brings the register as a workbook that another library reads', async () => {
    expect((await readSheet(register)).flat()).toContain('closed');
  });
});
