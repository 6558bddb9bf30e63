import { createWriteStream } from 'node:fs';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { stringify } from 'csv-stringify';
import type { Cell, Sheet } from './export-columns.js';
import type { ReadIncident } from './read-register.js';

/**
 * Writes one subject as comma-separated values (RFC 4180, UTF-8 with a mark that spreadsheets need). Instants are in
 * UTC by RFC 3339. A text that a spreadsheet would take for a formula gets an apostrophe before it.
 */
export async function writeCsv(
  file: string,
  { columns, rows }: Sheet,
  read: () => AsyncIterable<ReadIncident[]>,
): Promise<void> {
  async function* lines(): AsyncGenerator<string[]> {
    yield columns.map(({ header }) => header);
    for await (const part of read()) {
      for (const { incident, of } of part) {
        for (const cells of rows(incident, of)) yield cells.map(textOf);
      }
    }
  }
  await pipeline(
    Readable.from(lines()),
    stringify({ bom: true, record_delimiter: 'windows', escape_formulas: true }),
    createWriteStream(file, { mode: 0o600 }),
  );
}

function textOf(cell: Cell): string {
  if (cell === null) return '';
  return typeof cell === 'object' ? cell.instant : String(cell);
}
