import exceljs from 'exceljs';
import { readSheet } from 'read-excel-file/node';
import { beforeAll, describe, expect, it } from 'vitest';
import type { PacketRecord, Withheld } from '../../shared/hand-over/packet.js';
import { writePacketWorkbook } from '../../src/server/hand-over/write-packet-workbook.js';
import { readZip } from './read-zip.js';

/** What spreadsheets take for a formula where it is typed or stands in comma-separated values (OWASP, CSV injection). */
const FORMULAS = [
  '=1+1',
  '=HYPERLINK("http://x.example";"look")',
  "=cmd|' /C calc'!A0",
  '+1+1',
  '-2+3',
  '@SUM(1,1)',
  '\t=1+1',
  '\r=1+1',
  '\n=1+1',
  ' =1+1',
  '＝1+1',
  "'=1+1",
  '{=1+1}',
  '"=1+1"',
  '#REF!',
  'TRUE',
  '0042',
  '1e5',
  '2026-13-45',
  '2026-99-99T99:99:99Z',
];

/** Signs that XML cannot hold (XML 1.0, 2.2), as they come along with what somebody pastes. */
const CONTROLS = 'before\u0000\u0008\u000b\u001b[31m\u001f\ufffe\uffff\ud800after';

const known = (value: unknown) => ({ value, known: 'told', by: '=1+1' });

describe('the workbook of a packet', () => {
  let workbook: Buffer;
  beforeAll(async () => {
    const record = {
      ...{ format: 'incident-desk/packet-record/1', reference: '=1+1', asOf: '2026-06-20T23:30:00Z' },
      ...{ recipient: 'insurer', timeZone: 'America/Chicago', cautions: FORMULAS },
      sections: {
        people: {
          people: FORMULAS.map((words, n) => ({ id: `p${n}`, name: words, hospital: known(words) })),
        },
      },
      attachments: {
        task: [...FORMULAS, CONTROLS].map((title) => ({ title, owner: '=1+1', state: '@1', dueAt: null })),
      },
    } as PacketRecord;
    const withheld: Withheld = {
      format: 'incident-desk/packet-withheld/1',
      masked: [{ section: '=1+1', path: '/x', how: 'initials', reason: '=1+1' }],
      withheld: [{ kind: 'medical', what: '@SUM(1,1)', count: 2, reason: '+1+1' }],
    };
    workbook = await writePacketWorkbook(record, withheld);
  });

  it('holds no formula and no link in any of its parts', async () => {
    const parts = await readZip(workbook);
    const sheets = [...parts].filter(([path]) => path.startsWith('xl/worksheets/'));
    expect(sheets.length).toBeGreaterThan(3);
    for (const [path, xml] of sheets) {
      expect([path, /<(f|hyperlink|oleObject)[ >/]/.exec(xml.toString('utf8'))]).toEqual([path, null]);
    }
    expect([...parts.keys()].filter((path) => /external|macro|vba/i.test(path))).toEqual([]);
  });

  it('is not broken by what XML cannot hold', async () => {
    for (const [path, part] of await readZip(workbook)) {
      const found = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|&#x?0*[0-8];/.exec(
        part.toString('utf8'),
      );
      expect([path, found?.index]).toEqual([path, undefined]);
    }
    const cells = (await readSheet(workbook, 'Tasks')).flat().map(String);
    expect(cells.some((cell) => cell.startsWith('before') && cell.endsWith('after'))).toBe(true);
  });

  // ECMA-376, 18.3.1.4: what is of type `s` or `str` is shown, and never reckoned.
  it('keeps each as the text that it is, for two other readers', async () => {
    const book = new exceljs.Workbook();
    await book.xlsx.load(workbook as never);
    for (const sheet of book.worksheets) {
      sheet.eachRow((row) => row.eachCell(({ type }) => expect(type).not.toBe(exceljs.ValueType.Formula)));
    }
    const cells = new Set<unknown>();
    book.getWorksheet('People')?.eachRow((row) => row.eachCell(({ value }) => cells.add(value)));
    const read = (await readSheet(workbook, 'People')).flat().map((cell) => String(cell).trim());
    for (const typed of FORMULAS) {
      // XML has one end of a line (XML 1.0, 2.11); the other reader trims what it gives.
      const words = typed.replaceAll('\r', '\n');
      expect([words, cells.has(words), read.includes(words.trim())]).toEqual([words, true, true]);
    }
  });
});
