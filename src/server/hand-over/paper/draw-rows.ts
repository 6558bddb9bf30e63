import { PAGE, type Paper, type PaperText } from '../../platform/paper/paper.js';
import type { PaperRow } from './blocks.js';

const LABEL = { left: PAGE.left, width: 148, size: 9.5 } as const;
const TEXT = { left: 204, width: 236, size: 10 } as const;
const KNOWN = { left: 450, width: 114, size: 8.5 } as const;
const WIDE = { ...TEXT, width: PAGE.right - TEXT.left } as const;

/** So long a text is set across what is left of the page, and may run over to the next. */
const LONG_TEXT = 300;

/** A row for each thing: what it is, what is recorded, how it is known. */
export function drawRow(paper: Paper, row: PaperRow, table: PDFKit.PDFStructureElement): void {
  const long = row.text.length > LONG_TEXT;
  const known: PaperText = long ? { ...KNOWN, left: LABEL.left, width: LABEL.width } : KNOWN;
  const text: PaperText = row.known === undefined || row.known === '' || long ? WIDE : TEXT;
  const heights = [
    paper.heightOf(row.label, LABEL) + (long ? paper.heightOf(row.known ?? '', known) : 0),
    long ? 0 : paper.heightOf(row.text, text),
    paper.heightOf(row.known ?? '', known),
  ];
  paper.space(4);
  paper.needs(Math.max(...heights, long ? 60 : 0));
  const [top, begun] = [paper.document.y, paper.pages];
  const line = paper.group('TR', table);
  paper.write('TH', row.label, LABEL, line, top);
  const below = paper.document.y;
  if (long && row.known) paper.write('TD', row.known, known, line, below);
  const beside = paper.document.y;
  paper.write('TD', row.text, text, line, top);
  const end = paper.document.y;
  if (!long && row.known) paper.write('TD', row.known, known, line, top);
  paper.document.y = paper.pages === begun ? Math.max(below, beside, end, paper.document.y) : end;
  line.end();
}
