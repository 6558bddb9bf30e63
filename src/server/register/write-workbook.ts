import { createWriteStream } from 'node:fs';
import exceljs from 'exceljs';
import { sheetText } from '../../../shared/kernel/sheet-text.js';
import type { Cell, Sheet } from './export-columns.js';
import type { ReadIncident } from './read-register.js';
import { wallClock } from './wall-clock.js';

const TIME_FORMAT = 'yyyy-mm-dd hh:mm';

/** Columns of so many characters hold sentences: they break, and do not run over what stands beside them. */
const WRAPPED_WIDTH = 34;
const LINE_POINTS = 15;

/** Printed, a sheet is as wide as its paper, with its name and its page on each. */
function onPaper(title: string): Partial<exceljs.AddWorksheetOptions> {
  return {
    pageSetup: { orientation: 'landscape', fitToPage: true, fitToWidth: 1, fitToHeight: 0 },
    headerFooter: { oddFooter: `&L${title}&RPage &P of &N` },
  };
}

/**
 * Writes a workbook to a file, row by row: one sheet a subject, its header frozen, dates and numbers as what they are.
 * Text is stored as text, so nothing that somebody wrote becomes a formula. A spreadsheet knows no zones: times are
 * those of `timeZone`, which the last sheet names.
 */
export async function writeWorkbook(
  file: string,
  sheets: readonly Sheet[],
  read: () => AsyncIterable<ReadIncident[]>,
  timeZone: string,
  notes: readonly string[],
): Promise<void> {
  const workbook = new exceljs.stream.xlsx.WorkbookWriter({
    stream: createWriteStream(file, { mode: 0o600 }),
    useStyles: true,
  });
  for (const { title, columns, rows } of sheets) {
    const page = workbook.addWorksheet(title, { views: [{ state: 'frozen', ySplit: 1 }], ...onPaper(title) });
    page.columns = columns.map(({ header, width }) => ({
      header,
      width,
      ...(width >= WRAPPED_WIDTH && { style: { alignment: { wrapText: true, vertical: 'top' } } }),
    }));
    page.getRow(1).font = { bold: true };
    page.autoFilter = { from: { row: 1, column: 1 }, to: { row: 1, column: columns.length } };
    for await (const part of read()) {
      for (const { incident, of } of part) {
        for (const cells of rows(incident, of)) writeRow(page, cells, columns, timeZone);
      }
    }
    page.commit();
  }
  const about = workbook.addWorksheet('About');
  about.columns = [{ width: 110 }];
  for (const note of notes) about.addRow([note]).commit();
  about.commit();
  await workbook.commit();
}

function writeRow(
  page: exceljs.Worksheet,
  cells: readonly Cell[],
  columns: Sheet['columns'],
  timeZone: string,
): void {
  const row = page.addRow(cells.map((cell) => valueOf(cell, timeZone)));
  cells.forEach((cell, place) => {
    if (isInstant(cell)) row.getCell(place + 1).numFmt = TIME_FORMAT;
  });
  const lines = Math.max(1, ...cells.map((cell, place) => linesOf(cell, columns[place]?.width ?? 0)));
  // Not every reader makes a row as high as its text.
  if (lines > 1) row.height = lines * LINE_POINTS;
  row.commit();
}

function linesOf(cell: Cell, width: number): number {
  return typeof cell === 'string' && width >= WRAPPED_WIDTH ? Math.ceil((cell.length + 4) / width) : 1;
}

function valueOf(cell: Cell, timeZone: string): exceljs.CellValue {
  return isInstant(cell) ? wallClock(cell.instant, timeZone) : sheetText(cell);
}

function isInstant(cell: Cell): cell is Exclude<Cell, string | number | boolean | null> {
  return typeof cell === 'object' && cell !== null;
}
