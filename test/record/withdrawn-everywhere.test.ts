import { beforeAll, expect, it } from 'vitest';
import { RecordSettings } from '../../src/server/record/record.api.js';
import { verifyRecord } from '../../src/server/record/verify-record.js';
import { UnitOfWork } from '../../src/server/platform/database/unit-of-work.js';
import { type Browser, create, describeHouse } from '../accounts/house.js';
import { evidenceOf, openIncident, upload, writeSection } from '../evidence/evidence-desk.js';
import { sample } from '../evidence/samples.js';

const told = <T>(value: T) => ({ value, known: 'saw' });
const PLACE = 'zuiderplas';
const OWNER = 'quagmirelli';
const NAME = 'xanthippe';
const CAPTION = 'brontosaur';
const REASON = 'abracadabrant';

describeHouse('what is withdrawn', (house) => {
  let manager: Browser;
  let id: string;
  beforeAll(async () => {
    manager = await house().signedIn('manager');
    id = await openIncident(manager);
  });

  /** Every row of every table of the schema, as text. */
  async function everything(): Promise<string> {
    const lite = await house()
      .plainSql("SELECT name FROM sqlite_master WHERE type = 'table'")
      .catch(() => null);
    const named =
      lite ??
      (await house().plainSql('SELECT tablename AS name FROM pg_tables WHERE schemaname = current_schema()'));
    const rows: unknown[] = [];
    for (const { name } of named as { name: string }[]) {
      rows.push(await house().plainSql(`SELECT * FROM "${name}"`));
    }
    return JSON.stringify(rows).toLowerCase();
  }

  const withdraw = (section: string, path: string) =>
    manager
      .post(`/api/incidents/${id}/sections/${section}/withdrawals`)
      .send({ path, reason: 'Of another matter.' })
      .expect(200);

  it('is in no row of any table, and the log still proves itself', async () => {
    await writeSection(manager, id, 'time-and-place', { description: told(PLACE) });
    const line = { id: 'd1', of: told('other-property'), owner: OWNER };
    await writeSection(manager, id, 'damage', { lines: [line] });
    await upload(manager, id, sample('photo-with-position.jpg'), { about: {} });
    const file = await upload(manager, id, sample('photo-with-position.jpg'), {
      name: `${NAME}.jpg`,
      about: { caption: CAPTION },
    });
    const evidence = `${evidenceOf(id)}/${file.id}`;
    const before = await everything();
    for (const word of [PLACE, OWNER, NAME, CAPTION]) expect(before).toContain(word);

    await withdraw('time-and-place', '/description');
    await withdraw('damage', '/lines/d1/owner');
    await manager.post(`${evidence}/withdrawal`).send({ reason: 'Of another family.' }).expect(200);
    await manager.get(evidenceOf(id)).expect(200);
    const after = await everything();
    for (const word of [PLACE, OWNER, NAME, CAPTION]) expect(after).not.toContain(word);
    const { headsFile } = house().app.get(RecordSettings);
    expect((await verifyRecord(house().app.get(UnitOfWork), headsFile)).faults).toEqual([]);
  });

  it('is in no determination either, where it was the reason of an answer whether it is reportable', async () => {
    const one = await openIncident(manager);
    const answer = { aid: 'theft', jurisdictions: ['us'], answer: 'not-reportable', reason: REASON };
    const path = `/api/incidents/${one}/scope-answers`;
    const { id: signed } = (await create(manager, path, answer).expect(201)).body as { id: string };
    await create(manager, path, { ...answer, answer: 'reportable', reason: 'Found again.' }).expect(201);
    const determination = async (at = '') =>
      JSON.stringify((await manager.get(`/api/incidents/${one}/determination${at}`).expect(200)).body);
    expect(await determination()).toContain(REASON);

    const withdrawals = `/api/incidents/${one}/sections/scope-answers/withdrawals`;
    const reason = 'It named a patient.';
    await manager
      .post(withdrawals)
      .send({ path: `/answers/${signed}/answer`, reason })
      .expect(404);
    await manager
      .post(withdrawals)
      .send({ path: `/answers/${signed}/reason`, reason })
      .expect(200);
    expect(await everything()).not.toContain(REASON);
    for (const at of ['s/1', 's/2', 's/3', '']) expect(await determination(at)).not.toContain(REASON);
    expect(await determination('s/2')).toContain('not-reportable');
    expect(await determination()).toContain('Found again.');
    expect(await determination()).toContain('The reason was withdrawn.');
    const { headsFile } = house().app.get(RecordSettings);
    expect((await verifyRecord(house().app.get(UnitOfWork), headsFile)).faults).toEqual([]);
  });
});
