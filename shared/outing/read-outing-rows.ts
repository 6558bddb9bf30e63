import type { FieldError } from '../kernel/field-error.js';
import { readLocalTime } from './read-local-time.js';

/** A row of an imported list as an outing still to be checked, by the members of one. */
export interface OutingDraft {
  /** As a spreadsheet counts: the headings are row 1. */
  readonly row: number;
  readonly draft: Readonly<Record<string, string | number>>;
}

export interface OutingRows {
  readonly drafts: readonly OutingDraft[];
  /** Columns that mean nothing here, as they were headed. */
  readonly ignored: readonly string[];
  readonly errors: readonly FieldError[];
}

/** The columns that a list may have: member, what it is called to people, and the headings that mean it. */
export const OUTING_COLUMNS = [
  { member: 'unit', name: 'unit', headings: ['unit', 'craft', 'boat', 'unitnumber', 'craftname'] },
  { member: 'renter', name: 'renter', headings: ['renter', 'name', 'rentersname', 'rentername', 'customer'] },
  { member: 'phone', name: 'phone', headings: ['phone', 'telephone', 'mobile', 'cell', 'renterphone'] },
  { member: 'outAt', name: 'out at', headings: ['outat', 'out', 'timeout', 'start'] },
  { member: 'dueBackAt', name: 'due back at', headings: ['duebackat', 'dueback', 'due', 'backby', 'end'] },
  { member: 'aboard', name: 'riders', headings: ['riders', 'aboard', 'people', 'party', 'partysize'] },
  { member: 'vehicle', name: 'vehicle in the lot', headings: ['vehicleinthelot', 'vehicle', 'car', 'plate'] },
  { member: 'fuel', name: 'fuel', headings: ['fuel'] },
  { member: 'plan', name: 'plan', headings: ['plan', 'destination', 'goingto'] },
  { member: 'remark', name: 'remark', headings: ['remark', 'remarks', 'note', 'notes'] },
] as const;

const NEEDED = ['unit', 'dueBackAt'] as const;

/**
 * Reads the rows of a list of craft due back, the headings first. Every fault names its row, its field and the fix; with
 * one there is nothing to be imported.
 * @param day the day that a time alone belongs to
 * @example readOutingRows([['Unit', 'Due back'], ['PWC 7', '14:30']], '2026-06-13', 'America/Chicago').drafts[0]
 * // { row: 2, draft: { unit: 'PWC 7', dueBackAt: '2026-06-13T19:30:00.000Z' } }
 */
export function readOutingRows(rows: readonly (readonly string[])[], day: string, zone: string): OutingRows {
  const headings = rows[0] ?? [];
  const columns = headings.map(columnOf);
  const errors: FieldError[] = [];
  for (const member of NEEDED) {
    if (!columns.includes(member))
      errors.push(faultAt(1, member, 'Give the list a column with this heading.'));
  }
  columns.forEach((member, place) => {
    if (member !== null && columns.indexOf(member) !== place) {
      errors.push(faultAt(1, member, 'Two columns mean this: take one out or give it another heading.'));
    }
  });
  const ignored = headings.filter((heading, place) => columns[place] === null && heading.trim() !== '');
  if (errors.length > 0) return { drafts: [], ignored, errors };
  const drafts: OutingDraft[] = [];
  rows.slice(1).forEach((cells, place) => {
    if (cells.every((cell) => cell.trim() === '')) return;
    drafts.push(readRow(cells, { row: place + 2, columns, day, zone, errors }));
  });
  if (drafts.length === 0)
    errors.push({ pointer: '/csv', detail: 'The list has no rows below its headings.' });
  return { drafts, ignored, errors };
}

interface Reader {
  readonly row: number;
  readonly columns: readonly (string | null)[];
  readonly day: string;
  readonly zone: string;
  readonly errors: FieldError[];
}

function readRow(cells: readonly string[], { row, columns, day, zone, errors }: Reader): OutingDraft {
  if (cells.slice(columns.length).some((cell) => cell.trim() !== '')) {
    errors.push({
      pointer: `/rows/${row}`,
      detail: `Row ${row} has more fields than there are headings: put text with a comma into quotation marks.`,
    });
  }
  const draft: Record<string, string | number> = {};
  columns.forEach((member, place) => {
    const cell = cells[place]?.trim() ?? '';
    if (member === null || cell === '') return;
    if (member === 'outAt' || member === 'dueBackAt') {
      const time = readLocalTime(cell, day, zone);
      if (time.ok) draft[member] = time.at;
      else errors.push(faultAt(row, member, time.detail));
    } else draft[member] = member === 'aboard' && /^\d+$/.test(cell) ? Number(cell) : cell;
  });
  for (const member of NEEDED) {
    if ((cells[columns.indexOf(member)] ?? '').trim() === '')
      errors.push(faultAt(row, member, 'Fill it in.'));
  }
  return { row, draft };
}

/** A fault of a row, with its field in words, for somebody who has the spreadsheet before them. */
export function faultAt(row: number, member: string, detail: string): FieldError {
  const name = OUTING_COLUMNS.find((column) => column.member === member)?.name ?? member;
  return { pointer: `/rows/${row}/${member}`, detail: `Row ${row}, ${name}: ${detail}` };
}

function columnOf(heading: string): string | null {
  const key = heading.toLowerCase().replaceAll(/[^a-z]/g, '');
  return OUTING_COLUMNS.find(({ headings }) => (headings as readonly string[]).includes(key))?.member ?? null;
}
