import type { FilledItem, FilledReport } from '../../../../shared/report/filled-report.js';
import { REPORT_CAUTIONS } from '../../../../shared/report/report-cautions.js';
import { tellZonedTime } from '../../../../shared/report/tell-value.js';
import { Paper } from '../../platform/paper/paper.js';
import { hasUnprintable } from '../../platform/paper/paper-fonts.js';
import { drawFoot, drawHead } from './draw-frame.js';
import { drawItem, labelOf, numberOf } from './draw-item.js';
import type { Sheet } from './sheet.js';
import { drawDuties, drawStanding, drawTitle, reporterWords } from './draw-summary.js';

/**
 * The worksheet of one report, to be copied onto an agency's form or attached to it. Its layout is our own: the items in
 * the order of 33 CFR 173.57(b), each with its sign and word, a line to write on where something is missing, and the
 * place for date and signature (33 CFR 173.57(a)). The same sheet gives the same bytes.
 * @returns the PDF as a stream
 */
export function drawWorksheet(sheet: Sheet): PDFKit.PDFDocument {
  const { reference, report, timeZone, asOf, doubts } = sheet;
  const paper = new Paper({
    title: `Accident report worksheet ${reference}, ${report.vessel}, report of the ${reporterWords(report)}`,
    subject: 'Contents of a boating accident report (33 CFR 173.57)',
    language: 'en-US',
    asOf,
  });
  drawTitle(paper, sheet);
  drawDuties(paper, sheet);
  drawStanding(paper, report.counts);
  drawList(paper, 'Before you use it', REPORT_CAUTIONS);
  drawList(paper, 'What is missing', missingItems(report));
  paper.document.addPage();
  paper.write('H2', 'The items of 33 CFR 173.57(b)', { font: 'bold', size: 14 });
  const continued = new Map<number, string>();
  const draw = (item: FilledItem): void => {
    for (const page of drawItem(paper, item)) continued.set(page, numberOf(item));
  };
  report.items.forEach(draw);
  if (report.stateItems.length > 0) {
    paper.space(14);
    paper.needs(120);
    paper.write('H2', 'Items that a state adds', { font: 'bold', size: 14 });
    report.stateItems.forEach(draw);
  }
  drawSignature(paper, report);
  drawList(paper, 'What is doubtful about this list', doubts);
  if (lettersMissing(report)) {
    paper.write(
      'P',
      'A letter that this paper cannot print stands as its number in Unicode, such as [U+5F35]: copy the name from the record.',
    );
  }
  const tell = { ...sheet, when: tellZonedTime(asOf, timeZone) };
  return paper.finish((page, pages) => {
    if (page > 1) drawHead(paper, tell, continued.get(page));
    drawFoot(paper, tell, page, pages);
  });
}

function drawList(paper: Paper, title: string, lines: readonly string[]): void {
  if (lines.length === 0) return;
  paper.space(16);
  paper.needs(60);
  paper.write('H2', title, { font: 'bold', size: 12 });
  const list = paper.group('L');
  for (const line of lines) {
    paper.space(3);
    paper.needs(paper.heightOf(line));
    const item = paper.group('LI', list);
    paper.write('LBody', line, {}, item);
    item.end();
  }
  list.end();
}

/** So many lines leave the first page to what is said there. */
const MOST_LINES = 14;

/** Each item that lacks something, with what of it; of many the numbers alone. */
function missingItems({ items, stateItems }: FilledReport): string[] {
  const lacking = [...items, ...stateItems].filter(({ state }) => state === 'missing');
  if (lacking.length > MOST_LINES) return [`Items ${lacking.map(numberOf).join(', ')}`];
  return lacking.map((item) => {
    const labels = item.lines.filter(({ state }) => state === 'missing').map(labelOf);
    return `${numberOf(item)}   ${labels.join('; ')}`;
  });
}

function drawSignature(paper: Paper, report: FilledReport): void {
  paper.space(20);
  paper.needs(96);
  paper.write('H2', 'Date and signature', { font: 'bold', size: 12 });
  paper.write(
    'P',
    'The report is in writing, dated when it was completed, and signed by whoever prepared it (33 CFR 173.57(a)).',
  );
  paper.space(28);
  const { y } = paper.document;
  paper.rule(y, 0.8, 48, 330);
  paper.rule(y, 0.8, 354, 564);
  paper.write('P', `Signature of the ${reporterWords(report)}`, { size: 9, width: 282 }, undefined, y + 4);
  paper.write('P', 'Date', { size: 9, left: 354, width: 200 }, undefined, y + 4);
}

function lettersMissing({ items, stateItems, vessel }: FilledReport): boolean {
  const lines = [...items, ...stateItems].flatMap((item) => item.lines);
  return (
    hasUnprintable(vessel) || lines.some(({ text, subject }) => hasUnprintable(`${subject ?? ''} ${text}`))
  );
}
