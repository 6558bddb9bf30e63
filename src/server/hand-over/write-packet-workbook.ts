import exceljs from 'exceljs';
import type { PacketRecord, Withheld } from '../../../shared/hand-over/packet.js';
import { type SheetOfPacket, sheetsOfPacket } from './packet-sheets.js';

/** Of every workbook, so that the same packet is the same content. */
const AUTHOR = 'Incident desk';

/**
 * The record as a workbook, one sheet a subject. Text is stored as text, so that nothing which somebody wrote becomes a
 * formula; numbers are numbers, yes and no are words, as there is a third value.
 */
export async function writePacketWorkbook(record: PacketRecord, withheld: Withheld): Promise<Buffer> {
  const workbook = new exceljs.Workbook();
  workbook.creator = AUTHOR;
  workbook.lastModifiedBy = AUTHOR;
  workbook.created = new Date(record.asOf);
  workbook.modified = new Date(record.asOf);
  for (const sheet of sheetsOfPacket(record, withheld)) addSheet(workbook, sheet);
  return Buffer.from(await workbook.xlsx.writeBuffer());
}

function addSheet(workbook: exceljs.Workbook, { title, columns, rows }: SheetOfPacket): void {
  const page = workbook.addWorksheet(title, { views: [{ state: 'frozen', ySplit: 1 }] });
  page.columns = columns.map((header) => ({ header, width: widthOf(header) }));
  page.getRow(1).font = { bold: true };
  page.autoFilter = { from: { row: 1, column: 1 }, to: { row: 1, column: columns.length } };
  for (const cells of rows) {
    const row = page.addRow(cells);
    cells.forEach((cell, place) => {
      if (cell instanceof Date) row.getCell(place + 1).numFmt = 'yyyy-mm-dd hh:mm:ss';
      if (typeof cell === 'string') row.getCell(place + 1).alignment = { wrapText: true, vertical: 'top' };
    });
  }
}

function widthOf(header: string): number {
  return header === 'Value' || header === 'Reason' ? 60 : 24;
}
