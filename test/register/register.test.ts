import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import exceljs from 'exceljs';
import readExcel, { readSheet } from 'read-excel-file/node';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Browser, create, describeHouse } from '../accounts/house.js';

const told = <T>(value: T) => ({ value, known: 'told' });
const FORMULA = '=HYPERLINK("https://example.org","pay here")';
const TEXAS = {
  occurred: told({ at: '2026-06-13T11:20:00-05:00', precision: 'to-the-minute' }),
  states: told(['TX']),
  description: told(FORMULA),
  position: told({ latitude: 33.83, longitude: -96.575, accuracyM: 12 }),
};
const HURT = {
  assessment: told('complete'),
  everyoneAccountedFor: told('yes'),
  people: [{ id: 'p', role: told('operator'), outcome: told('injured'), care: told('beyond-first-aid') }],
};
const CRAFT = {
  craft: [
    { id: 'A', name: 'PWC 7', ours: true, use: told('rental'), numbered: told('yes'), inspected: told('no') },
  ],
};

interface Line {
  id: string;
  reference: string;
  status: string;
  summary: { craft?: string[]; people?: number; outcomes?: string[]; occurredAt?: string; position?: object };
  duties: { duty: string; vessel: string; outcome: string; dueAt: string | null; overdue: boolean }[];
  tasks: { open: number; overdue: number; done: number };
}

describeHouse('the register', (house) => {
  let manager: Browser;
  let folder = '';
  let hurt = '';
  let bare = '';

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'desk-register-'));
    manager = await house().signedIn('manager');
    hurt = await opened('capsized at the sandbar');
    await write(hurt, 'time-and-place', TEXAS);
    await write(hurt, 'craft', CRAFT);
    await write(hurt, 'people', HURT);
    await write(hurt, 'account', { casualtyTypes: told(['capsizing']) });
    bare = await opened('help', ['PWC 9']);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const opened = async (said: string, craftNamed: string[] = []): Promise<string> => {
    const answer = await create(manager, '/api/incidents', { call: { said, craftNamed } }).expect(201);
    return (answer.body as { id: string }).id;
  };
  const write = (id: string, section: string, document: object) =>
    manager
      .put(`/api/incidents/${id}/sections/${section}`)
      .set('If-Match', '"0"')
      .send({ document })
      .expect(200);
  const page = async (query = ''): Promise<{ items: Line[]; next: string | null }> =>
    (await manager.get(`/api/register${query}`).expect(200)).body as { items: Line[]; next: string | null };
  const references = async (query: string): Promise<string[]> =>
    (await page(query)).items.map(({ id }) => id);

  it('shows people, craft, duties and tasks of each incident, the latest first', async () => {
    const { items } = await page();
    expect(items.map(({ id }) => id)).toEqual([bare, hurt]);
    const [, line] = items;
    expect(line?.summary).toMatchObject({ craft: ['PWC 7'], people: 1, outcomes: ['injured'] });
    expect(line?.duties).toContainEqual(
      expect.objectContaining({
        duty: 'us/accident-report',
        vessel: 'A',
        outcome: 'required',
        overdue: true,
      }),
    );
    expect(line?.tasks.open).toBeGreaterThan(0);
    // A call of which nothing is known is never shown as one of which nothing is due.
    expect(items[0]?.duties.map(({ outcome }) => outcome)).not.toContain('not-required');
  });

  it.each<[string, () => string[]]>([
    ['?outcome=required', () => [hurt]],
    ['?reports=overdue', () => [hurt]],
    ['?status=closed', () => []],
    ['?q=sandbar', () => [hurt]],
    ['?craft=PWC%207', () => [hurt]],
    ['?craft=PWC%209', () => [bare]],
    ['?craft=PWC', () => []],
    ['?casualty=capsizing', () => [hurt]],
    ['?casualty=grounding', () => []],
    ['?hurt=yes', () => [hurt]],
    ['?hurt=no', () => []],
    ['?hurt=unknown', () => [bare]],
    ['?order=oldest', () => [hurt, bare]],
    ['?order=due', () => [hurt, bare]],
    ['?openedFrom=2100-01-01T00:00:00Z', () => []],
    ['?openedUntil=2100-01-01T00:00:00%2B02:00', () => [bare, hurt]],
  ])('is narrowed by %s', async (query, expected) => {
    expect(await references(query)).toEqual(expected());
    const counted = await manager.get(`/api/register/count${query}`).expect(200);
    expect(counted.body).toEqual({ count: expected().length, timeZone: 'America/Chicago' });
  });

  it.each<[string, () => string[]]>([
    ['latest', () => [bare, hurt]],
    ['oldest', () => [hurt, bare]],
    ['due', () => [hurt, bare]],
  ])('comes in pages, the %s first, that leave nothing out and show nothing twice', async (order, all) => {
    const first = await page(`?limit=1&order=${order}`);
    const second = await page(`?limit=1&order=${order}&after=${first.next ?? ''}`);
    expect([...first.items, ...second.items].map(({ id }) => id)).toEqual(all());
    expect(second.next).toBeNull();
  });

  it('tells where each lies and of which kind it is, as far as that is known', async () => {
    const { items } = await page('?q=sandbar');
    expect(items[0]?.summary).toMatchObject({
      position: { latitude: 33.83, longitude: -96.575 },
      casualtyTypes: ['capsizing'],
    });
  });

  it.each(['?outcome=maybe', '?limit=0', '?after=x', '?colour=red'])('refuses %s by name', async (query) => {
    const { body } = (await manager.get(`/api/register${query}`).expect(422)) as {
      body: { errors: object[] };
    };
    expect(body.errors).toHaveLength(1);
  });

  describe('as a file', () => {
    const fetched = async (asked: object): Promise<{ file: string; type: string; name: string }> => {
      const begun = await create(manager, '/api/register-exports', asked).expect(202);
      const { id } = begun.body as { id: string };
      await expect
        .poll(async () => (await manager.get(`/api/register-exports/${id}`)).body as object, {
          timeout: 20_000,
        })
        .toMatchObject({ state: 'ready' });
      const answer = await manager
        .get(`/api/register-exports/${id}/file`)
        .buffer(true)
        .parse((stream, done) => {
          const parts: Buffer[] = [];
          stream.on('data', (part: Buffer) => parts.push(part));
          stream.on('end', () => done(null, Buffer.concat(parts)));
        })
        .expect(200);
      const file = join(folder, id);
      writeFileSync(file, answer.body as Buffer);
      const headers = answer.headers as Record<string, string>;
      return { file, type: headers['content-type'] ?? '', name: headers['content-disposition'] ?? '' };
    };

    it('is a workbook that a reader of another author opens, with dates, numbers and flags as what they are', async () => {
      const { file, type, name } = await fetched({ format: 'xlsx' });
      expect(type).toContain('spreadsheetml');
      expect(name).toMatch(/^attachment; filename="register-\d{4}-\d\d-\d\d\.xlsx"$/);
      const sheets = await readExcel(file);
      expect(sheets.map(({ sheet }) => sheet)).toEqual(['Incidents', 'Duties', 'Tasks', 'Filings', 'About']);
      const [header = [], , row = []] = await readSheet(file, 'Incidents');
      const cell = (title: string) => row[header.indexOf(title)];
      // A spreadsheet keeps a time as a part of a day, which is off by less than a thousandth of a second.
      expect(cell('Happened')).toBeInstanceOf(Date);
      expect(Math.abs(Number(cell('Happened')) - Date.parse('2026-06-13T11:20:00Z'))).toBeLessThan(2);
      expect(cell('People')).toBe(1);
      expect(cell('Where')).toBe(FORMULA);
      const duties = await readSheet(file, 'Duties');
      expect(duties.flat()).toContain('Required');
      expect(duties.flat()).toContain(false);
      expect((await readSheet(file, 'About')).flat().join(' ')).toContain('America/Chicago');
    });

    it('has a frozen header on every sheet, and no formula', async () => {
      const { file } = await fetched({ format: 'xlsx' });
      const workbook = new exceljs.Workbook();
      await workbook.xlsx.readFile(file);
      for (const sheet of workbook.worksheets.filter(({ name }) => name !== 'About')) {
        expect(sheet.views).toMatchObject([{ state: 'frozen', ySplit: 1 }]);
        sheet.eachRow((row) => row.eachCell(({ formula }) => expect(formula).toBeFalsy()));
      }
    });

    it('is one subject as comma-separated values in which nothing is a formula', async () => {
      const { file, type } = await fetched({ format: 'csv', subject: 'incidents', outcome: 'required' });
      expect(type).toContain('text/csv');
      const [header = [], ...rows] = parse(readFileSync(file), { bom: true });
      expect(rows).toHaveLength(1);
      expect(rows[0]?.[header.indexOf('Where')]).toBe(`'${FORMULA}`);
      expect(rows[0]?.[header.indexOf('Happened')]).toBe('2026-06-13T11:20:00-05:00');
    });

    it('is begun once by a retry, and is nobody else’s', async () => {
      const key = 'a-key-of-this-export';
      const [one, again] = [
        await create(manager, '/api/register-exports', { format: 'csv' }, key).expect(202),
        await create(manager, '/api/register-exports', { format: 'csv' }, key).expect(202),
      ];
      const { id } = one.body as { id: string };
      expect((again.body as { id: string }).id).toBe(id);
      const other = await house().signedIn('manager');
      await other.get(`/api/register-exports/${id}`).expect(404);
      await other.get(`/api/register-exports/${id}/file`).expect(404);
    });

    it('is refused by the name of the member', async () => {
      const answer = await create(manager, '/api/register-exports', { format: 'pdf' }).expect(422);
      expect(answer.body).toMatchObject({ errors: [{ pointer: '/format' }] });
    });
  });

  it('is narrowed by the station of a craft, which the record links or names, also after it got another name', async () => {
    const made = async (path: string, body: object) =>
      (await create(manager, path, body).expect(201)).body as { id: string; version: number };
    const { id: stationId } = await made('/api/stations', {
      name: 'North dock',
      timeZone: 'America/Chicago',
    });
    const details = { unitName: 'PWC 8', type: 'personal-watercraft', stationId };
    await made('/api/craft', { ...details, unitName: 'PWC 9' });
    const { id: fleetCraft, version } = await made('/api/craft', details);
    const linked = await opened('somebody fell in');
    await write(linked, 'craft', { craft: [{ id: 'A', name: 'PWC 8', ours: true, fleetCraft }] });
    const renamed = { ...details, unitName: 'PWC 28' };
    await manager.put(`/api/craft/${fleetCraft}`).set('If-Match', `"${version}"`).send(renamed).expect(200);
    expect(await references('?station=North%20dock')).toEqual([linked, bare]);
    expect(await references('?station=North%20dock&craft=PWC%208')).toEqual([linked]);
    expect(await references('?station=South%20dock')).toEqual([]);
    const asked = { format: 'csv', subject: 'incidents', station: 'North dock' };
    const { id } = (await create(manager, '/api/register-exports', asked).expect(202)).body as { id: string };
    await expect
      .poll(async () => (await manager.get(`/api/register-exports/${id}`)).body as object, {
        timeout: 20_000,
      })
      .toMatchObject({ state: 'ready', total: 2 });
  });

  it('calls nobody hurt only where everybody who is named is known to be unhurt', async () => {
    const unhurt = await opened('aground, all well');
    const person = { id: 'p', outcome: told('unhurt') };
    await write(unhurt, 'people', { people: [person] });
    expect(await references('?hurt=no')).toEqual([unhurt]);
    const half = await opened('aground, one of them not seen yet');
    await write(half, 'people', { people: [person, { id: 'q' }] });
    expect(await references('?hurt=no')).toEqual([unhurt]);
    expect(await references('?hurt=unknown')).toContain(half);
  });
});
