import exceljs from 'exceljs';
import { sheetText } from '../../../../shared/kernel/sheet-text.js';
import type { IncidentHistory } from './history.service.js';
import { historyNotes, historyTables, type HistoryTable, linesTable } from './history-tables.js';

const DOLLARS = '#,##0.00';
const DAY = 'yyyy-mm-dd';

/** A sheet a grouping, one for the incidents, and one that says what is counted. Numbers are numbers. */
export async function writeHistoryWorkbook(history: IncidentHistory): Promise<Buffer> {
  const workbook = new exceljs.Workbook();
  workbook.created = new Date(history.asOf);
  workbook.modified = workbook.created;
  for (const table of [...historyTables(history), linesTable(history)]) addSheet(workbook, table);
  const about = workbook.addWorksheet('About');
  about.columns = [{ width: 110 }];
  for (const note of historyNotes(history)) about.addRow([note]).getCell(1).alignment = { wrapText: true };
  return Buffer.from(await workbook.xlsx.writeBuffer());
}

function addSheet(workbook: exceljs.Workbook, { title, columns, rows }: HistoryTable): void {
  const page = workbook.addWorksheet(title, {
    views: [{ state: 'frozen', ySplit: 1 }],
    pageSetup: { orientation: 'landscape', fitToPage: true, fitToWidth: 1, fitToHeight: 0 },
    headerFooter: { oddFooter: `&L${title}&RPage &P of &N` },
  });
  page.columns = columns.map((header, place) => ({
    header,
    width: place === 0 || ['Events', 'Craft', 'Stations'].includes(header) ? 26 : 14,
    ...(header.endsWith('US dollars') && { style: { numFmt: DOLLARS } }),
    ...(header === 'Day' && { style: { numFmt: DAY } }),
  }));
  page.getRow(1).font = { bold: true };
  page.getRow(1).alignment = { wrapText: true, vertical: 'top' };
  const day = columns.indexOf('Day');
  for (const cells of rows)
    page.addRow(cells.map((cell, place) => (place === day ? new Date(String(cell)) : sheetText(cell))));
}
