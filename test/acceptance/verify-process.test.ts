import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { EvidenceSettings } from '../../src/server/evidence/evidence-settings.js';
import { RecordSettings } from '../../src/server/record/record.api.js';
import { House, type Browser } from '../accounts/house.js';
import { bodyOf, openIncident, upload, writeSection } from '../evidence/evidence-desk.js';
import { sample } from '../evidence/samples.js';
import { ENGINES } from '../support/databases.js';

describe.each(ENGINES)('the verify command (%s)', (engine) => {
  let house: House;
  let manager: Browser;
  let incident = '';
  let reference = '';
  let file = '';

  beforeAll(async () => {
    house = await House.open(engine);
    manager = await house.signedIn('manager');
    incident = await openIncident(manager);
    reference = bodyOf<{ reference: string }>(await manager.get(`/api/incidents/${incident}`)).reference;
    await writeSection(manager, incident, 'account', {
      whatHappened: { value: 'It tipped.', known: 'told' },
    });
    file = (await upload(manager, incident, sample('photo-with-position.jpg'), { name: 'bow.jpg' })).id;
    return () => house.close();
  });

  const verify = () => {
    const { database } = house;
    const { status, stdout } = spawnSync(process.execPath, ['dist/src/cli/verify.js'], {
      encoding: 'utf8',
      env: {
        ...process.env,
        DATABASE_URL: database.engine === 'sqlite' ? `sqlite:${database.file}` : database.url,
        RECORD_HEADS_FILE: house.app.get(RecordSettings).headsFile,
        EVIDENCE_FOLDER: house.app.get(EvidenceSettings).folder,
      },
    });
    return { status, stdout };
  };

  it('ends with 0 and says that all is as written', () => {
    const { status, stdout } = verify();
    expect(stdout).toMatch(/^1 incidents, \d+ amendments, 1 files of evidence: all as written\.\n$/);
    expect(status).toBe(0);
  });

  it('names a row that was edited with plain SQL', async () => {
    const edit = (from: string, to: string) =>
      house.plainSql(
        `UPDATE incident_section SET document = REPLACE(document, '${from}', '${to}') WHERE section = 'account'`,
      );
    await edit('It tipped.', 'She jumped.');
    const { status, stdout } = verify();
    expect(stdout).toContain(reference);
    expect(stdout).toMatch(/account.*\/whatHappened/);
    expect(status).toBe(1);
    await edit('She jumped.', 'It tipped.');
    expect(verify().status).toBe(0);
  });

  it('names a file of evidence whose bytes were swapped, with its incident', () => {
    const { folder } = house.app.get(EvidenceSettings);
    const [name = ''] = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
      (one) => one.startsWith('files') && one.endsWith(file),
    );
    const path = join(folder, name);
    const original = readFileSync(path);
    const swapped = Buffer.from(original);
    swapped[swapped.length - 10] = (swapped[swapped.length - 10] ?? 0) ^ 1;
    writeFileSync(path, swapped);
    const { status, stdout } = verify();
    expect(stdout).toContain('bow.jpg');
    expect(stdout).toContain(reference);
    expect(status).toBe(1);
    writeFileSync(path, original);
    expect(verify().status).toBe(0);
  });

  it('finds the last amendment gone', async () => {
    const [last] = (await house.plainSql('SELECT MAX(sequence) AS n FROM amendment')) as { n: number }[];
    await house.plainSql(`DELETE FROM amendment WHERE sequence = ${last?.n ?? 0}`);
    const { status, stdout } = verify();
    expect(stdout).toMatch(new RegExp(`there were ${last?.n ?? 0}`));
    expect(status).toBe(1);
  });
});
