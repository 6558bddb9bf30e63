import { PAGE, type Paper, type PaperText } from '../../platform/paper/paper.js';
import type { PaperRow } from './blocks.js';

const LABEL = { left: PAGE.left, width: 148, size: 9.5 } as const;
const TEXT = { left: 204, width: 236, size: 10 } as const;
const KNOWN = { left: 450, width: 114, size: 8.5 } as const;
const WIDE = { ...TEXT, width: PAGE.right - TEXT.left } as const;
const INDENT = 10;

/** So long a text is set across what is left of the page, and may run over to the next. */
const LONG_TEXT = 300;

/**
 * A row for each thing: what it is, what is recorded, how it is known. Rows of a thing within a thing stand under its
 * name, and where they run over to another page that says again of what they are, as a page may be taken out.
 * @param of what all the rows are of, where that stands in a heading
 */
export function drawRows(paper: Paper, rows: readonly PaperRow[], of?: string): void {
  const table = paper.group('Table');
  let before: string | undefined;
  for (const row of rows) {
    const begins = row.under !== undefined && row.under !== before;
    const height = heightOf(paper, row) + (begins ? UNDER_HEIGHT : 0);
    paper.space(4);
    if (paper.needs(height)) drawContinued(paper, [of, begins ? undefined : row.under]);
    if (begins) drawUnder(paper, row.under, table);
    drawRow(paper, row, table);
    before = row.under;
  }
  table.end();
}

const UNDER_HEIGHT = 20;

function drawUnder(paper: Paper, under: string, table: PDFKit.PDFStructureElement): void {
  const line = paper.group('TR', table);
  paper.space(2);
  paper.write('TH', under, { size: 9.5, font: 'bold', scope: 'Column' }, line);
  line.end();
  paper.space(3);
}

function drawContinued(paper: Paper, parts: readonly (string | undefined)[]): void {
  const named = parts.flatMap((part, place) =>
    part === undefined ? [] : [place === 0 ? part : part.toLowerCase()],
  );
  if (named.length === 0) return;
  paper.artifact('Layout', () =>
    paper.draw(`${named.join(', ')}, continued`, { size: 9.5, font: 'bold' }, paper.document.y),
  );
  paper.space(6);
}

function drawRow(paper: Paper, row: PaperRow, table: PDFKit.PDFStructureElement): void {
  const { label, known, text } = looksOf(row);
  const [top, begun] = [paper.document.y, paper.pages];
  const line = paper.group('TR', table);
  paper.write('TH', row.label, label, line, top);
  const below = paper.document.y;
  if (isLong(row) && row.known) paper.write('TD', row.known, known, line, below);
  const beside = paper.document.y;
  paper.write('TD', row.text, text, line, top);
  const end = paper.document.y;
  if (!isLong(row) && row.known) paper.write('TD', row.known, known, line, top);
  paper.document.y = paper.pages === begun ? Math.max(below, beside, end, paper.document.y) : end;
  line.end();
}

const isLong = ({ text }: PaperRow): boolean => text.length > LONG_TEXT;

function looksOf(row: PaperRow): { label: PaperText; known: PaperText; text: PaperText } {
  const label =
    row.under === undefined ? LABEL : { ...LABEL, left: LABEL.left + INDENT, width: LABEL.width - INDENT };
  const known = isLong(row) ? { ...KNOWN, left: label.left, width: label.width } : KNOWN;
  return { label, known, text: !row.known || isLong(row) ? WIDE : TEXT };
}

/** Of a text that may run over only what must stay together. */
function heightOf(paper: Paper, row: PaperRow): number {
  const { label, known, text } = looksOf(row);
  const [named, knownHow] = [paper.heightOf(row.label, label), paper.heightOf(row.known ?? '', known)];
  return isLong(row)
    ? Math.max(60, named + knownHow)
    : Math.max(named, knownHow, paper.heightOf(row.text, text));
}
