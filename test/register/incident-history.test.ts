import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import exceljs from 'exceljs';
import { beforeAll, expect, it } from 'vitest';
import type { HistoryGroup } from '../../shared/patterns/incident-history.js';
import { HISTORY_SCHEMAS } from '../../src/server/register/history/history-schemas.js';
import { type Browser, create, describeHouse } from '../accounts/house.js';
import { bodyOf, openIncident, write } from '../follow-up/desk.js';
import { readPdf } from '../report/read-pdf.js';

interface History {
  total: HistoryGroup;
  byMonth: HistoryGroup[];
  byCraft: HistoryGroup[];
  byStation: HistoryGroup[];
  byType: HistoryGroup[];
  lines: { reference: string; day: string; paid: object | null }[];
  outings: number | null;
}

const told = (value: unknown) => ({ value, known: 'told' });
const person = (id: string, outcome: string) => ({ id, name: 'Zofia Quill', outcome: told(outcome) });

describeHouse('the incident history', (house) => {
  let manager: Browser;
  let references: string[];
  beforeAll(async () => {
    manager = await house().signedIn('manager');
    const administrator = await house().signedIn('administrator');
    const keep = async (path: string, body: object): Promise<string> =>
      bodyOf<{ id: string }>(await create(administrator, path, body).expect(201)).id;
    const station = await keep('/api/stations', {
      name: 'South dock',
      timeZone: 'America/Chicago',
      state: 'TX',
    });
    const seven = await keep('/api/craft', {
      unitName: 'PWC 7',
      type: 'personal-watercraft',
      stationId: station,
    });
    const incident = async (at: string, sections: Record<string, object>): Promise<string> => {
      const { id, reference } = await openIncident(manager, house().now());
      const when = { occurred: told({ at, precision: 'to-the-minute' }), timeZone: told('America/Chicago') };
      await write(manager, id, 'time-and-place', when);
      for (const [section, document] of Object.entries(sections)) await write(manager, id, section, document);
      return reference;
    };
    const ours = (id: string, name: string) => ({ id, ours: true, fleetCraft: seven, name });
    references = [
      // Half past ten on the last evening in Texas is the next day in UTC.
      await incident('2026-03-01T03:30:00Z', {
        account: { casualtyTypes: told(['grounding', 'sinking']) },
        craft: { craft: [ours('c1', 'PWC 7'), ours('c2', 'PWC 8')] },
        people: {
          people: [person('p1', 'injured'), person('p2', 'unknown'), { id: 'p3', name: 'Zofia Quill' }],
        },
        damage: {
          lines: [
            { id: 'd1', amount: told({ low: 100.1, high: 200.2 }) },
            { id: 'd2', material: told(0.2) },
            { id: 'd3', amount: told('unknown') },
          ],
          money: [{ id: 'm1', kind: 'insurer-total', amount: told(1500.5) }],
        },
      }),
      await incident('2026-02-10T18:00:00Z', {
        craft: { craft: [ours('c1', 'PWC 7')] },
        people: { people: [person('p1', 'died')] },
      }),
      await incident('2026-03-02T18:00:00Z', {}),
    ];
  });

  const of = (path = '', from = '2026-02-01', until = '2026-02-28'): string =>
    `/api/incident-history${path}?from=${from}&until=${until}`;

  it('counts what happened in a period by the day at the place, and what is not known beside it', async () => {
    const answer = await manager.get(of()).expect(200);
    const history = bodyOf<History>(answer);
    expect(history.lines.map(({ reference, day }) => [reference, day])).toEqual([
      [references[1], '2026-02-10'],
      [references[0], '2026-02-28'],
    ]);
    expect(history.total).toMatchObject({
      incidents: 2,
      people: { hurt: 1, died: 1, missing: 0, unhurt: 0, unknown: 2 },
      damage: { low: 100.3, high: 200.4, unknown: 1 },
      paid: { low: 1500.5, high: 1500.5, unknown: 0 },
    });
    const names = (groups: HistoryGroup[]) => groups.map(({ name, incidents }) => [name, incidents]);
    expect(names(history.byMonth)).toEqual([['2026-02', 2]]);
    expect(names(history.byCraft)).toEqual([
      ['PWC 7', 2],
      ['PWC 8', 1],
    ]);
    expect(names(history.byStation)).toEqual([['South dock', 2]]);
    expect(names(history.byType)).toEqual([
      ['Grounding', 1],
      ['Not said yet', 1],
    ]);
    expect([history.lines[0]?.paid, history.outings]).toEqual([null, null]);
    const validate = addFormats
      .default(new Ajv2020({ strict: false }))
      .compile(HISTORY_SCHEMAS['IncidentHistory'] as object);
    expect([validate(answer.body), validate.errors]).toEqual([true, null]);
  });

  it('goes out as workbook and paper, numbers as numbers and no names of people', async () => {
    const fetch = async (path: string): Promise<Buffer> => {
      const answer = await manager
        .get(of(path))
        .buffer(true)
        .parse((from, done) => {
          const parts: Buffer[] = [];
          from.on('data', (part: Buffer) => parts.push(part));
          from.on('end', () => done(null, Buffer.concat(parts)));
        })
        .expect(200);
      return answer.body as Buffer;
    };
    const book = new exceljs.Workbook();
    await book.xlsx.load((await fetch('/workbook')) as never);
    expect(book.worksheets.map(({ name }) => name)).toEqual([
      ...['By month', 'By craft', 'By station', 'By type', 'Incidents', 'About'],
    ]);
    const total = book.getWorksheet('By month')?.getRow(3).values as unknown[];
    expect(total.slice(1)).toEqual(['All', 2, 1, 1, 0, 2, 0, 100.3, 200.4, 1, 1500.5]);
    // A day is a day, so that a spreadsheet sorts and counts by it.
    expect(book.getWorksheet('Incidents')?.getRow(2).getCell(2).value).toEqual(new Date('2026-02-10'));
    const pdf = await readPdf(await fetch('/paper'));
    const text = pdf.texts.join(' ');
    expect(pdf.isTagged).toBe(true);
    for (const words of [
      '1 February 2026 to 28 February 2026',
      'PWC 8',
      'February 2026',
      '$100.30 to $200.40, and 1 without a figure',
      references[0],
    ])
      expect(text).toContain(words);
    const sheets: string[] = [];
    book.eachSheet((sheet) => sheet.eachRow((row) => sheets.push(JSON.stringify(row.values))));
    expect(`${text} ${sheets.join(' ')}`).not.toContain('Quill');
  });

  it('says of an incident in which nobody is listed that nothing is known of people', async () => {
    const { total } = bodyOf<History>(await manager.get(of('', '2026-03-02', '2026-03-02')).expect(200));
    expect(total).toMatchObject({ incidents: 1, unlisted: 1, people: { hurt: 0, unhurt: 0, unknown: 0 } });
  });

  it('says which part of a period cannot be used', async () => {
    await manager.get(of('', '2026-02-28', '2026-02-01')).expect(422);
    await manager.get('/api/incident-history?from=yesterday').expect(422);
  });
});
