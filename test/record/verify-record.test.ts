import { appendFileSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { beforeAll, expect, it } from 'vitest';
import { checkRecord } from '../../src/server/record/record.api.js';
import { describeEngines } from '../support/databases.js';
import { person, RECORD } from './record-app.js';
import { Client } from './record-desk.js';

const staff = person('staff', 'Ann');
const manager = person('manager', 'Max');

/** Somebody with the database's password, after the service wrote; each puts back what it changed. */
describeEngines('a check of the record', RECORD, (desk) => {
  const client = new Client(desk);
  let id: string;

  beforeAll(async () => {
    for (let n = 1; n <= 3; n += 1) await client.opened(staff);
    id = await client.opened(staff);
    const document = { people: [{ id: 'p1', name: 'Ann', phone: '580-555-0101' }] };
    await client.write(staff, `/${id}/sections/people`, { document }, 0);
    const changed = { people: [{ id: 'p1', name: 'Anna', phone: '580-555-0101' }] };
    await client.write(staff, `/${id}/sections/people`, { document: changed, reason: 'Spelling.' }, 1);
    const withdrawal = { path: '/people/p1/phone', reason: 'Of another.' };
    await client.send(manager, 'POST', `/${id}/sections/people/withdrawals`, withdrawal);
  });

  it('finds everything as it was written', async () => {
    expect(await client.check()).toEqual([]);
  });

  it('is made from the settings of the environment, as the command makes it', async () => {
    const { target } = desk;
    const DATABASE_URL = target.engine === 'sqlite' ? `sqlite:${target.file}` : target.url;
    const environment = { DATABASE_URL, RECORD_HEADS_FILE: client.headsFile };
    expect(await checkRecord(environment)).toEqual({ incidents: 4, amendments: 11, faults: [] });
    await expect(checkRecord({ DATABASE_URL: 'mysql://x' })).rejects.toThrow('DATABASE_URL must be');
  });

  const PEOPLE = `incident_id = (SELECT id FROM incident WHERE reference LIKE '%-0004') AND section = 'people'`;
  it.each<[what: string, change: string, undo: string, code: string, words: RegExp]>([
    [
      'a section edited with plain SQL',
      `UPDATE incident_section SET document = REPLACE(document, 'Anna', 'Bert') WHERE ${PEOPLE}`,
      `UPDATE incident_section SET document = REPLACE(document, 'Bert', 'Anna') WHERE ${PEOPLE}`,
      'section-changed',
      /^Section people of \d{4}-0004 .*at \/people\/p1\/name\.$/,
    ],
    [
      'the words that a section is found by',
      `UPDATE incident_section SET words = words || ' x' WHERE ${PEOPLE}`,
      `UPDATE incident_section SET words = REPLACE(words, ' x', '') WHERE ${PEOPLE}`,
      'section-changed',
      /search words/,
    ],
    [
      'an incident closed with plain SQL',
      `UPDATE incident SET status = 'closed' WHERE reference LIKE '%-0004'`,
      `UPDATE incident SET status = 'open' WHERE reference LIKE '%-0004'`,
      'incident-changed',
      /Incident \d{4}-0004 .*status/,
    ],
    [
      'what an amendment says',
      `UPDATE amendment SET openings = REPLACE(openings, 'Anna', 'Bert') WHERE sequence = 10`,
      `UPDATE amendment SET openings = REPLACE(openings, 'Bert', 'Anna') WHERE sequence = 10`,
      'value-changed',
      /^Amendment 10 \(people of \d{4}-0004\): "to" at \/people\/p1\/name/,
    ],
    [
      'who made an amendment',
      `UPDATE amendment SET who = 'account-Max' WHERE sequence = 10`,
      `UPDATE amendment SET who = 'account-Ann' WHERE sequence = 10`,
      'leaf-changed',
      /^Amendment 10 /,
    ],
    [
      'when it was made',
      `UPDATE amendment SET made_at = '2020' || SUBSTR(made_at, 5) WHERE sequence = 10`,
      `UPDATE amendment SET made_at = (SELECT updated_at FROM incident WHERE 1 = 0) WHERE 1 = 0`,
      'leaf-changed',
      /^Amendment 10 /,
    ],
  ])('names %s', async (_what, change, undo, code, words) => {
    const before = await desk.plainSql('SELECT made_at FROM amendment WHERE sequence = 10');
    await desk.plainSql(change);
    const faults = await client.check();
    expect(faults.map((fault) => fault.code)).toContain(code);
    expect(faults.map(({ text }) => text)).toContainEqual(expect.stringMatching(words));
    expect(JSON.stringify(faults)).not.toMatch(/Bert|Anna|555-0101/);
    await desk.plainSql(undo);
    await desk.plainSql(
      `UPDATE amendment SET made_at = '${String(before[0]?.['made_at'])}' WHERE sequence = 10`,
    );
    expect(await client.check()).toEqual([]);
  });

  it('tells a deletion from a withdrawal', async () => {
    const [row] = await desk.plainSql('SELECT openings FROM amendment WHERE sequence = 10');
    const openings = JSON.parse(String(row?.['openings'])) as { from: unknown; to: unknown }[];
    const set = (kept: unknown) =>
      desk.plainSql(`UPDATE amendment SET openings = '${JSON.stringify(kept)}' WHERE sequence = 10`);
    await set(openings.map(() => ({ from: null, to: null })));
    expect(await client.faults()).toContain('content-removed');
    await set(openings);
    expect(await client.check()).toEqual([]);
  });

  it('finds the last amendments gone, even if the rest was made to fit', async () => {
    await desk.plainSql(`DELETE FROM determination WHERE incident_id = '${id}'`);
    await desk.plainSql(`DELETE FROM amendment WHERE incident_id = '${id}'`);
    await desk.plainSql(`DELETE FROM incident_section WHERE incident_id = '${id}'`);
    await desk.plainSql(`DELETE FROM incident WHERE id = '${id}'`);
    const [, line] = /^(.*"size":6.*)$/m.exec(readFileSync(client.headsFile, 'utf8')) ?? [];
    const { root } = JSON.parse(String(line)) as { root: string };
    await desk.plainSql(`UPDATE record_log SET size = 6, root = '${root}'`);
    const faults = await client.check();
    expect(faults.map(({ code }) => code)).toContain('tail-removed');
    expect(faults.map(({ text }) => text).join()).toMatch(/there were 11, and the log ends with 6/);
  });

  it('says when the heads outside the database are gone or broken, and minds no line cut off by a failing power', async () => {
    const kept = readFileSync(client.headsFile, 'utf8')
      .split('\n')
      .filter((line) => /"size":[1-6],/.test(line));
    writeFileSync(client.headsFile, `${kept.join('\n')}\n`);
    appendFileSync(client.headsFile, '{"size":7,"ro');
    expect(await client.check()).toEqual([]);
    writeFileSync(client.headsFile, `nonsense\n${kept.join('\n')}\n`);
    expect(await client.faults()).toEqual(['heads-unreadable']);
    rmSync(client.headsFile);
    expect(await client.faults()).toEqual(['heads-missing']);
  });
});
