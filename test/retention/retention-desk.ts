import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { EvidenceSettings } from '../../src/server/evidence/evidence.api.js';
import { RecordSettings } from '../../src/server/record/record.api.js';
import { verifyRecord } from '../../src/server/record/verify-record.js';
import { UnitOfWork } from '../../src/server/platform/database/unit-of-work.js';
import type { RetentionLine } from '../../shared/retention/retention-line.js';
import { type Browser, create, type House } from '../accounts/house.js';
import { bodyOf, openIncident, upload, writeSection } from '../evidence/evidence-desk.js';
import { sample } from '../evidence/samples.js';
import { draftFor } from '../hand-over/packet-desk.js';

export const told = (value: unknown) => ({ value, known: 'told', by: 'Ann Lee' });
export const YEARS = 366 * 24 * 3_600_000;

/** One word in each place where somebody can write one; a search for one says what was left. */
export const PLANTED = {
  hospital: 'zuiderhospitaal',
  earlier: 'brontosurgery',
  why: 'quagmireason',
  name: 'xanthippe quill',
  phone: '903-555-0199',
  statement: 'gorgonzolawords',
  caption: 'triceratopscaption',
  note: 'privilegedwombat',
  draft: 'draftaxolotl',
  task: 'taskplatypus',
  account: 'narwhalaccount',
} as const;

/** An incident in which something of every kind is written, with nothing left to do. */
export async function fullIncident(manager: Browser, counsel = 'Cleo Law'): Promise<string> {
  const id = await openIncident(manager);
  const person = (hospital: string) => ({
    assessment: told('complete'),
    people: [
      {
        id: 'p1',
        name: PLANTED.name,
        phone: PLANTED.phone,
        birthDate: told('1990-05-01'),
        employee: told('no'),
        outcome: told('injured'),
        care: told('first-aid'),
        hospital: told(hospital),
      },
    ],
  });
  await writeSection(manager, id, 'people', person(PLANTED.earlier));
  await manager
    .put(`/api/incidents/${id}/sections/people`)
    .set('If-Match', '"1"')
    .send({ document: person(PLANTED.hospital), reason: `It was the ${PLANTED.why}.` })
    .expect(200);
  await writeSection(manager, id, 'time-and-place', { states: told(['TX']) });
  await writeSection(manager, id, 'account', { whatHappened: told(PLANTED.account) });
  await writeSection(manager, id, 'statements', {
    statements: [{ id: 's1', person: 'p1', name: PLANTED.name, words: PLANTED.statement }],
  });
  await upload(manager, id, sample('photo-with-position.jpg'), { about: { caption: PLANTED.caption } });
  const asked = { counsel, requestedOn: '2026-06-14' };
  const requests = `/api/incidents/${id}/counsel-requests`;
  const request = bodyOf(await create(manager, requests, asked).expect(201)).id;
  await create(manager, `${requests}/${request}/entries`, { words: PLANTED.note }).expect(201);
  await manager
    .put(`/api/incidents/${id}/drafts/scene`)
    .send({ document: { remarks: told(PLANTED.draft) } })
    .expect(200);
  await create(manager, `/api/incidents/${id}/tasks`, {
    title: PLANTED.task,
    dueAt: '2026-12-01T12:00:00Z',
    owner: 'manager',
  }).expect(201);
  await create(manager, `/api/incidents/${id}/packets`, draftFor('in-house')).expect(201);
  return id;
}

/** Everything done and settled, and the incident closed. What is done here past the service is tested elsewhere. */
export async function close(house: House, manager: Browser, id: string): Promise<void> {
  await house.plainSql(`UPDATE task SET state = 'done' WHERE incident_id = '${id}'`);
  await house.plainSql(`UPDATE duty_state SET settled = true WHERE incident_id = '${id}'`);
  const { version } = bodyOf<{ version: number }>(await manager.get(`/api/incidents/${id}`).expect(200));
  await manager
    .put(`/api/incidents/${id}/status`)
    .set('If-Match', `"${version}"`)
    .send({ status: 'closed', reason: 'Done.' })
    .expect(200);
}

export async function lines(browser: Browser, query = 'limit=100'): Promise<RetentionLine[]> {
  const answer = await browser.get(`/api/retention?${query}`).expect(200);
  return bodyOf<{ items: RetentionLine[] }>(answer).items;
}

export async function lineOf(browser: Browser, kind: string, of: string): Promise<RetentionLine | undefined> {
  return (await lines(browser)).find((one) => one.id === `${kind}/${of}`);
}

/** Decides on the line as it is listed now. */
export async function decide(browser: Browser, line: RetentionLine | undefined, body: object) {
  const { kind, incidentId, month, version } = line ?? {
    kind: '',
    incidentId: null,
    month: null,
    version: 0,
  };
  return create(browser, '/api/retention/decisions', {
    kind,
    ...(incidentId !== null && { incident: incidentId }),
    ...(month !== null && { month }),
    decision: 'delete',
    reason: 'Its time is over.',
    ...body,
  }).set('If-Match', `"${version}"`);
}

export async function faults(house: House) {
  const { headsFile } = house.app.get(RecordSettings);
  return (await verifyRecord(house.app.get(UnitOfWork), headsFile)).faults;
}

/** Every row of every table of the schema, as text. */
export async function everything(house: House): Promise<string> {
  const lite = house.database.engine === 'sqlite';
  const named = await house.plainSql(
    lite
      ? "SELECT name FROM sqlite_master WHERE type = 'table'"
      : 'SELECT tablename AS name FROM pg_tables WHERE schemaname = current_schema()',
  );
  const rows: unknown[] = [];
  for (const { name } of named as { name: string }[])
    rows.push(await house.plainSql(`SELECT * FROM "${name}"`));
  return JSON.stringify(rows).toLowerCase();
}

/** The bytes of the database of SQLite and of its log, and of every file under the folder of the evidence. */
export function bytesOnDisk(house: House): string {
  const { database } = house;
  const beside =
    database.engine === 'sqlite' ? [database.file, `${database.file}-wal`].flatMap((file) => read(file)) : [];
  const evidence = house.app.get(EvidenceSettings).folder;
  return Buffer.concat([...beside, ...filesUnder(evidence).flatMap((file) => read(file))])
    .toString('latin1')
    .toLowerCase();
}

export function filesUnder(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => join(folder, name))
    .filter((path) => statSync(path).isFile());
}

function read(file: string): Buffer[] {
  try {
    return [readFileSync(file)];
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return [];
    throw error;
  }
}
