import { spawnSync } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readSheet } from 'read-excel-file/node';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '../../src/server/accounts/accounts.api.js';
import { IncidentsService } from '../../src/server/record/record.api.js';
import { openApp, type TestApp } from '../support/app.js';
import { ENGINES } from '../support/databases.js';

const MAX: Actor = {
  kind: 'person',
  accountId: 'account-max',
  personName: 'Max',
  role: 'manager',
  sessionId: 'session',
};

describe.each(ENGINES)('the export command (%s)', (engine) => {
  let desk: TestApp;
  let folder = '';
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'desk-export-'));
    desk = await openApp(engine);
    for (let n = 1; n <= 3; n += 1) {
      await desk.app.get(IncidentsService).open({ call: { said: `help ${n}` } }, randomUUID(), MAX);
    }
  });
  afterAll(async () => {
    await desk.close();
    rmSync(folder, { recursive: true, force: true });
  });

  const run = (...words: string[]) => {
    const { database } = desk;
    const address = database.engine === 'sqlite' ? `sqlite:${database.file}` : database.url;
    return spawnSync(process.execPath, ['dist/src/cli/export.js', ...words], {
      encoding: 'utf8',
      env: { ...process.env, DATABASE_URL: address, BUSINESS_TIME_ZONE: 'America/Chicago' },
    });
  };

  it('writes the workbook while the service runs, for nobody else on the machine to read', async () => {
    const file = join(folder, 'register.xlsx');
    const { status, stderr } = run(file);
    expect([status, stderr]).toEqual([0, `Written to ${file}\n`]);
    expect(await readSheet(file, 'Incidents')).toHaveLength(4);
    expect(statSync(file).mode & 0o077).toBe(0);
  });

  it('writes one subject of the incidents that are asked for', () => {
    const file = join(folder, 'tasks.csv');
    expect(run(file, '--subject', 'tasks', '--words', 'help').status).toBe(0);
    expect(readFileSync(file, 'utf8').split('\r\n')[0]).toContain('Reference,Task,For');
  });

  it.each([
    [['register.pdf'], /format: Must be one of/],
    [['a.csv', '--status', 'lost'], /status: Must be one of/],
    [['a.csv', '--colour', 'red'], /colour/],
    [[], /Name one file to write/],
  ])('refuses %j and says how it is used', (words, told) => {
    const { status, stderr } = run(...words);
    expect(status).toBe(2);
    expect(stderr).toMatch(told);
    expect(stderr).toContain('npm run -s export -- FILE.xlsx');
  });
});
