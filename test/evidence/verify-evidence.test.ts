import { execFile } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { appendFileSync, renameSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkEvidence } from '../../src/server/evidence/evidence.api.js';
import { EvidenceSettings } from '../../src/server/evidence/evidence-settings.js';
import { writingSource } from '../../src/server/platform/database/data-source.js';
import { RecordSettings } from '../../src/server/record/record.api.js';
import { House, type Browser } from '../accounts/house.js';
import { cloneTemplate, type DatabaseClone } from '../support/database-clone.js';
import { ENGINES } from '../support/databases.js';
import { bodyOf, evidenceOf, openIncident, sha256, upload, type Answer } from './evidence-desk.js';

const VERIFY = join(import.meta.dirname, '..', '..', 'dist', 'src', 'cli', 'verify.js');
/** Read in one piece, so that what is wrong is found before anything is sent. */
const BYTES = Buffer.from(randomBytes(50_000).toString('hex'));

describe.each(ENGINES)('the check of evidence (%s)', (engine) => {
  let clone: DatabaseClone;
  let house: House;
  let staff: Browser;
  let manager: Browser;
  let incident: string;
  let reference: string;
  beforeAll(async () => {
    clone = await cloneTemplate(engine);
    house = await House.open(engine, { database: clone.target });
    staff = await house.signedIn('staff');
    manager = await house.signedIn('manager');
    incident = await openIncident(staff);
    reference = String(bodyOf(await staff.get(`/api/incidents/${incident}`))['reference']);
  });
  afterAll(async () => {
    await house.close();
    await clone.drop();
  });

  const environment = () => {
    const { target } = clone;
    return {
      DATABASE_URL: target.engine === 'sqlite' ? `sqlite:${target.file}` : target.url,
      EVIDENCE_FOLDER: house.app.get(EvidenceSettings).folder,
      RECORD_HEADS_FILE: house.app.get(RecordSettings).headsFile,
    };
  };
  const pathOf = ({ id, sha256: hash }: Answer): string =>
    join(house.app.get(EvidenceSettings).folder, 'files', String(hash).slice(0, 2), `${String(hash)}.${id}`);
  const check = async () => checkEvidence(environment());
  const verify = () =>
    new Promise<{ status: number; said: string }>((resolve) => {
      execFile(process.execPath, [VERIFY], { env: { ...process.env, ...environment() } }, (error, said) =>
        resolve({ status: Number(error?.code ?? 0), said }),
      );
    });

  it('finds nothing where nothing was done, also after a withdrawal', async () => {
    await upload(staff, incident, BYTES, { name: 'sound.txt' });
    const wrong = await upload(staff, incident, BYTES, { name: 'wrong.txt' });
    await manager
      .post(`${evidenceOf(incident)}/${wrong.id}/withdrawal`)
      .send({ reason: 'Wrong' })
      .expect(200);
    expect(await check()).toEqual({ files: 1, faults: [] });
    expect(await verify()).toMatchObject({
      status: 0,
      said: expect.stringContaining('1 files of evidence: all as written') as string,
    });
  });

  const other = Buffer.concat([BYTES.subarray(0, -1), Buffer.from('!')]);
  it.each<[string, (path: string) => void, string, Buffer | null]>([
    ['swapped', (path) => writeFileSync(path, other), 'evidence-changed', other],
    ['cut short', (path) => truncateSync(path, 1000), 'evidence-changed', BYTES.subarray(0, 1000)],
    [
      'made longer',
      (path) => appendFileSync(path, '\n'),
      'evidence-changed',
      Buffer.concat([BYTES, Buffer.from('\n')]),
    ],
    ['renamed', (path) => renameSync(path, `${path}.old`), 'evidence-missing', null],
    ['deleted', (path) => rmSync(path), 'evidence-missing', null],
  ])(
    'names a file that was %s, its incident and both hashes, and nobody can download it',
    async (how, harm, code, now) => {
      const file = await upload(staff, incident, BYTES, { name: `${how}.txt` });
      harm(pathOf(file));
      const { faults } = await check();
      const fault = faults.find(({ text }) => text.includes(`${how}.txt of ${reference}`));
      expect(fault?.code).toBe(code);
      expect(fault?.text).toContain(sha256(BYTES));
      if (now !== null) expect(fault?.text).toContain(sha256(now));
      const download = staff.get(`${evidenceOf(incident)}/${file.id}/original`);
      // Of another size it is not begun; of the right size it is found out before its last byte is sent.
      await download.expect(how === 'swapped' ? 500 : 409);
    },
  );

  it('cuts the line of a download that had begun', async () => {
    const large = Buffer.from(randomBytes(1_500_000).toString('hex'));
    const file = await upload(staff, incident, large, { name: 'large.txt' });
    writeFileSync(pathOf(file), Buffer.concat([large.subarray(0, -1), Buffer.from('!')]));
    const download = staff.get(`${evidenceOf(incident)}/${file.id}/original`);
    await expect(download.buffer(true)).rejects.toThrow();
  });

  it('names withdrawn content that somebody brought back', async () => {
    const file = await upload(staff, incident, BYTES, { name: 'back.txt' });
    await manager
      .post(`${evidenceOf(incident)}/${file.id}/withdrawal`)
      .send({ reason: 'Wrong' })
      .expect(200);
    writeFileSync(pathOf(file), BYTES);
    expect((await check()).faults).toContainEqual({
      code: 'evidence-not-withdrawn',
      text: `${file.id} of ${reference} was withdrawn, and its content is still there.`,
    });
  });

  it('ends the command with 1 and a line a fault, beside those of the record', async () => {
    const behind = await writingSource(clone.target, {}).initialize();
    await behind.query(`UPDATE incident_section SET document = '{"said":"nothing"}' WHERE section = 'call'`);
    await behind.destroy();
    const { status, said } = await verify();
    expect(status).toBe(1);
    expect(said).toContain(`evidence-changed: swapped.txt of ${reference}`);
    expect(said).toMatch(new RegExp(`^(?!evidence).*${reference}`, 'm'));
  });
});
