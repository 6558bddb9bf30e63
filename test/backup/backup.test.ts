import { spawnSync } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { existsSync, mkdtempSync, readdirSync, rmSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeBackupOf, restoreBackupTo } from '../../src/server/backup/backup.api.js';
import { EvidenceSettings } from '../../src/server/evidence/evidence-settings.js';
import { RecordSettings } from '../../src/server/record/record.api.js';
import { type Browser, House } from '../accounts/house.js';
import { bodyOf, openIncident, upload } from '../evidence/evidence-desk.js';
import { cloneTemplate, type DatabaseClone } from '../support/database-clone.js';

const silent = (): void => undefined;
const BYTES = Buffer.from(randomBytes(50_000).toString('hex'));
const listOf = (folder: string): string[] =>
  existsSync(folder)
    ? readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => join(entry.parentPath, entry.name))
    : [];

describe('a copy of a desk that runs', () => {
  const folder = mkdtempSync(join(tmpdir(), 'desk-backup-'));
  const into = join(folder, 'copies');
  let clone: DatabaseClone;
  let house: House;
  let staff: Browser;
  beforeAll(async () => {
    clone = await cloneTemplate('sqlite');
    house = await House.open('sqlite', { database: clone.target });
    staff = await house.signedIn('staff');
    const incident = await openIncident(staff);
    await upload(staff, incident, BYTES, { name: 'sound.txt' });
  });
  afterAll(async () => {
    await house.close();
    await clone.drop();
    rmSync(folder, { recursive: true, force: true });
  });

  const environment = () => ({
    DATABASE_URL: `sqlite:${clone.target.engine === 'sqlite' ? clone.target.file : ''}`,
    EVIDENCE_FOLDER: house.app.get(EvidenceSettings).folder,
    RECORD_HEADS_FILE: house.app.get(RecordSettings).headsFile,
  });
  const elsewhere = (name: string) => ({
    DATABASE_URL: `sqlite:${join(folder, name, 'desk.sqlite')}`,
    EVIDENCE_FOLDER: join(folder, name, 'evidence'),
    RECORD_HEADS_FILE: join(folder, name, 'heads'),
  });

  it('holds everything, is sound, and is seen by the manager and not by staff', async () => {
    const made = await makeBackupOf(environment(), into, silent);
    expect(made).toMatchObject({ incidents: 1, files: 1, faults: [], linked: 0 });
    const manager = await house.signedIn('manager');
    const seen = await manager.get('/api/backups').expect(200);
    expect(seen.body).toMatchObject({
      items: [{ madeAt: made.at, folder: made.folder, incidents: 1, faults: 0 }],
    });
    await staff.get('/api/backups').expect(403);
  });

  it('is for nobody else on the machine to read', () => {
    for (const path of [into, ...listOf(into)])
      expect([path, statSync(path).mode & 0o077]).toEqual([path, 0]);
  });

  it('takes up no second room for evidence that an earlier copy has', async () => {
    const second = await makeBackupOf(environment(), into, silent);
    expect(second).toMatchObject({ files: 1, linked: 1, faults: [] });
    const [file] = listOf(join(second.folder, 'evidence'));
    expect(statSync(file ?? '').nlink).toBe(2);
  });

  it('is restored to a desk that answers with what was copied, without what came after', async () => {
    const made = await makeBackupOf(environment(), into, silent);
    await openIncident(staff);
    const restored = elsewhere('restored');
    expect(await restoreBackupTo(restored, made.folder, silent)).toMatchObject({ incidents: 1, faults: [] });
    const file = restored.DATABASE_URL.slice('sqlite:'.length);
    const desk = await House.open('sqlite', { database: { engine: 'sqlite', file } });
    const answer = await (await desk.signedIn('staff')).get('/api/incidents').expect(200);
    expect(bodyOf<{ items: unknown[] }>(answer).items).toHaveLength(1);
    await desk.close();
  });

  it('is not restored over a desk, and not when a file of it was cut', async () => {
    const made = await makeBackupOf(environment(), into, silent);
    await expect(restoreBackupTo(environment(), made.folder, silent)).rejects.toThrow(/is there already/);
    const [file] = listOf(join(made.folder, 'evidence'));
    truncateSync(file ?? '', 10);
    const target = elsewhere('refused');
    await expect(restoreBackupTo(target, made.folder, silent)).rejects.toThrow(
      /evidence-changed: sound\.txt/,
    );
    expect(listOf(join(folder, 'refused'))).toEqual([]);
  });

  it('copies anew what an earlier copy has in another size', async () => {
    const made = await makeBackupOf(environment(), into, silent);
    expect(made).toMatchObject({ linked: 0, faults: [] });
  });

  it('says what is missing when evidence was lost, and keeps the copy', async () => {
    const [file] = listOf(join(house.app.get(EvidenceSettings).folder, 'files'));
    rmSync(file ?? '');
    const made = await makeBackupOf(environment(), into, silent);
    expect(made.faults).toEqual([expect.stringMatching(/^evidence-missing: sound\.txt/)]);
    expect(existsSync(join(made.folder, 'desk.sqlite'))).toBe(true);
  });

  it.each([
    ['backup', [join(folder, 'command')], 1, /Copied to .*: 2 incidents/],
    ['restore', [join(folder, 'nowhere')], 2, /There is no copy of a desk in/],
    ['backup', [], 2, /Name one folder\.\n\nnpm run -s backup -- FOLDER/],
  ])('%s %j ends with a status that tells how it went', (command, words, status, said) => {
    const ran = spawnSync(process.execPath, [`dist/src/cli/${command}.js`, ...words], {
      encoding: 'utf8',
      env: { ...process.env, ...environment() },
    });
    expect([ran.status, `${ran.stdout}${ran.stderr}`]).toEqual([status, expect.stringMatching(said)]);
  });

  it('lies in no folder that it copies, and tells what to do on PostgreSQL', async () => {
    const inside = join(environment().EVIDENCE_FOLDER, 'files', 'copies');
    await expect(makeBackupOf(environment(), inside, silent)).rejects.toThrow(/name another folder/);
    const postgres = { DATABASE_URL: 'postgres://desk@localhost/desk' };
    await expect(makeBackupOf(postgres, into, silent)).rejects.toThrow(/pg_dump/);
  });

  it('is not begun where the folder is a file', async () => {
    writeFileSync(join(folder, 'taken'), '');
    await expect(makeBackupOf(environment(), join(folder, 'taken'), silent)).rejects.toThrow(
      /EEXIST|ENOTDIR/,
    );
  });
});
