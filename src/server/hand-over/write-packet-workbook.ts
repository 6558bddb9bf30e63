import exceljs from 'exceljs';
import type { PacketRecord, Withheld } from '../../../shared/hand-over/packet.js';
import { sheetText } from '../../../shared/kernel/sheet-text.js';
import { type SheetOfPacket, sheetsOfPacket } from './packet-sheets.js';

/** Of every workbook, so that the same packet is the same content. */
const AUTHOR = 'Incident desk';

/** In characters, by the title of the column. */
const WIDTHS: Readonly<Record<string, number>> = {
  Value: 56,
  Reason: 70,
  What: 40,
  Task: 70,
  Unit: 12,
  Whose: 14,
  Stands: 14,
  'How many': 10,
};
const USUAL_WIDTH = 28;

/**
 * The record as a workbook, one sheet a subject. Text is stored as text, so that nothing which somebody wrote becomes a
 * formula; numbers are numbers, yes and no are words, as there is a third value. Printed, each sheet fits the width of
 * a page and says what it is of.
 */
export async function writePacketWorkbook(record: PacketRecord, withheld: Withheld): Promise<Buffer> {
  const workbook = new exceljs.Workbook();
  workbook.creator = AUTHOR;
  workbook.lastModifiedBy = AUTHOR;
  workbook.created = new Date(record.asOf);
  workbook.modified = new Date(record.asOf);
  for (const sheet of sheetsOfPacket(record, withheld)) addSheet(workbook, sheet, record.reference);
  return Buffer.from(await workbook.xlsx.writeBuffer());
}

function addSheet(
  workbook: exceljs.Workbook,
  { title, columns, rows }: SheetOfPacket,
  reference: string,
): void {
  const page = workbook.addWorksheet(title, {
    views: [{ state: 'frozen', ySplit: 1 }],
    pageSetup: {
      orientation: 'landscape',
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      printTitlesRow: '1:1',
    },
    headerFooter: { oddFooter: `&LIncident ${reference}, ${title}&RPage &P of &N` },
  });
  page.columns = columns.map((header) => ({ header, width: WIDTHS[header] ?? USUAL_WIDTH }));
  page.getRow(1).font = { bold: true };
  page.autoFilter = { from: { row: 1, column: 1 }, to: { row: 1, column: columns.length } };
  for (const cells of rows) {
    const row = page.addRow(cells.map(sheetText));
    row.alignment = { wrapText: true, vertical: 'top', horizontal: 'left' };
    cells.forEach((cell, place) => {
      if (cell instanceof Date) row.getCell(place + 1).numFmt = isDay(cell) ? DAY : TIME;
    });
  }
}

const DAY = 'yyyy-mm-dd';
const TIME = 'yyyy-mm-dd hh:mm';
const DAY_MS = 86_400_000;
const isDay = (date: Date): boolean => date.getTime() % DAY_MS === 0;
