import type { FilledItem, ReportLine } from '../../../../shared/report/filled-report.js';
import type { FormBasis } from '../../../../shared/report/report-form.js';
import { PAGE, type Paper } from '../../platform/paper/paper.js';
import { drawSign, STATE_WORDS } from './state-sign.js';

/** The columns of an item's table: title, left edge and width in points. */
export const COLUMNS = [
  ['Asked', 82, 128],
  ['Recorded', 218, 226],
  ['How it is known', 452, 112],
] as const;

const [ASKED, RECORDED, KNOWN] = COLUMNS;

const BASIS_WORDS: Readonly<Record<FormBasis, string>> = {
  read: '',
  'read-old-text': ' Older text of the rule: check the form.',
  memory: ' From memory: check the form.',
};

/** So long a text is set across what is left of the page. */
const LONG_TEXT = 300;

/**
 * One item: its number large, its state as sign and word, and a row for each thing that it asks.
 * @returns the pages, the first being 1, on which it goes on
 */
export function drawItem(paper: Paper, item: FilledItem): number[] {
  const words = `${item.words}.${BASIS_WORDS[item.basis]}`;
  const look = { font: 'bold', size: 10.5, left: ASKED[1], width: 362 } as const;
  const first = item.lines[0];
  const head = Math.max(paper.heightOf(words, look), 20);
  paper.space(8);
  paper.needs(head + 16 + (first === undefined ? 0 : heightToKeep(paper, first)));
  const begun = paper.pages;
  const top = paper.document.y;
  paper.rule(top, 1.6);
  paper.artifact('Layout', () => drawSign(paper, item.state, KNOWN[1], top + 8));
  const part = paper.group('Sect');
  const heading = { font: 'bold', size: 17, left: PAGE.left, width: 34 } as const;
  paper.write('H3', numberOf(item), heading, part, top + 6);
  paper.write('P', words, look, part, top + 7);
  const below = Math.max(paper.document.y, top + 28);
  paper.write(
    'P',
    STATE_WORDS[item.state],
    { font: 'bold', size: 10, left: KNOWN[1] + 16, width: 96 },
    part,
    top + 7,
  );
  paper.document.y = Math.max(below, paper.document.y);
  const table = paper.group('Table', part);
  for (const line of item.lines) drawLine(paper, line, table);
  table.end();
  part.end();
  return Array.from({ length: paper.pages - begun }, (_, index) => begun + index + 1);
}

/** `numberOf({ id: 'WI-gear', … })` is `'WI'`: of an item of a state the state. */
export function numberOf({ id }: Pick<FilledItem, 'id'>): string {
  return id.split('-')[0] ?? id;
}

function drawLine(paper: Paper, line: ReportLine, table: PDFKit.PDFStructureElement): void {
  paper.space(4);
  paper.needs(heightToKeep(paper, line));
  const [top, begun] = [paper.document.y, paper.pages];
  const row = paper.group('TR', table);
  paper.write('TH', labelOf(line), { size: 9.5, left: ASKED[1], width: ASKED[2] }, row, top);
  const below = paper.document.y;
  const source = isLong(line) ? { left: ASKED[1], width: ASKED[2] } : { left: KNOWN[1], width: KNOWN[2] };
  if (isLong(line)) paper.write('TD', line.source ?? '', { size: 8.5, ...source }, row, below);
  const bottom = Math.max(below, paper.document.y);
  paper.write('TD', textOf(line), lookOf(line), row, top);
  const end = paper.document.y;
  if (!isLong(line)) paper.write('TD', line.source ?? '', { size: 8.5, ...source }, row, top);
  paper.document.y = paper.pages === begun ? Math.max(bottom, end, paper.document.y) : end;
  if (line.state === 'missing') drawWritingLine(paper);
  row.end();
}

/** Where something is missing it can be written by hand. */
function drawWritingLine(paper: Paper): void {
  paper.space(12);
  paper.rule(paper.document.y, 0.8, RECORDED[1], PAGE.right);
  paper.space(3);
}

function isLong({ text }: ReportLine): boolean {
  return text.length > LONG_TEXT;
}

function lookOf(line: ReportLine) {
  const bold = line.state === 'answered' && !isLong(line);
  const width = isLong(line) ? PAGE.right - RECORDED[1] : RECORDED[2];
  return { font: bold ? 'bold' : 'plain', size: 10, left: RECORDED[1], width } as const;
}

/** `labelOf({ subject: 'PWC 7', label: 'Number', … })` is `'PWC 7: Number'`. */
export function labelOf({ label, subject }: ReportLine): string {
  return [subject, label].filter((part) => part !== null && part !== '').join(': ');
}

function textOf({ state, text }: ReportLine): string {
  return state === 'missing' ? `Missing. ${text}.`.replace(/([.?])\.$/, '$1') : text;
}

/** A long account runs over the pages; everything else stays in one piece. */
function heightToKeep(paper: Paper, line: ReportLine): number {
  return isLong(line) ? 60 : heightOf(paper, line);
}

function heightOf(paper: Paper, line: ReportLine): number {
  const writing = line.state === 'missing' ? 15 : 0;
  return Math.max(
    paper.heightOf(labelOf(line), { size: 9.5, width: ASKED[2] }),
    paper.heightOf(line.source ?? '', { size: 8.5, width: KNOWN[2] }),
    paper.heightOf(textOf(line), lookOf(line)) + writing,
  );
}
