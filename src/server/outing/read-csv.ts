import { CsvError, parse } from 'csv-parse/sync';
import type { Reading } from '../../../shared/kernel/reading.js';

const SEPARATORS = [',', ';', '\t'] as const;

/**
 * The fields of a list as RFC 4180 writes them, with the separator that its headings use most.
 * @example readCsv('Unit;Due back\nPWC 7;14:30') // { ok: true, value: [['Unit', 'Due back'], ['PWC 7', '14:30']] }
 */
export function readCsv(text: string): Reading<string[][]> {
  const headings = text.split(/\r?\n/, 1)[0] ?? '';
  const count = (separator: string): number => headings.split(separator).length;
  const [delimiter] = [...SEPARATORS].sort((one, other) => count(other) - count(one));
  try {
    const rows = parse(text, {
      delimiter: delimiter ?? ',',
      bom: true,
      relax_column_count: true,
      skip_empty_lines: false,
      record_delimiter: ['\r\n', '\n', '\r'],
    });
    return { ok: true, value: rows };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const detail = `Row ${Number(error['lines'] ?? 1)}: a quotation mark is open or stands inside a field. Close it, or double it.`;
    return { ok: false, errors: [{ pointer: '/csv', detail }] };
  }
}
