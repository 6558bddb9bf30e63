import { PAGE, type Paper } from '../../platform/paper/paper.js';
import { COLUMNS } from './draw-item.js';
import { reporterWords } from './draw-summary.js';
import type { Sheet } from './sheet.js';

interface Framed extends Sheet {
  /** The as-of instant as the clock at the place shows it. */
  readonly when: string;
}

/**
 * The head of every page but the first: whose report it is, what the columns hold, and which item goes on from the page
 * before.
 */
export function drawHead(paper: Paper, { reference, report }: Framed, continued: string | undefined): void {
  paper.draw(
    `${reference}   ${report.vessel}, report of the ${reporterWords(report)}`,
    { font: 'bold', size: 9, width: 516 },
    34,
  );
  paper.document.rect(PAGE.left, 48, PAGE.right - PAGE.left, 3).fill('#000000');
  for (const [title, left, width] of COLUMNS) paper.draw(title, { size: 8.5, left, width }, 57);
  if (continued !== undefined) paper.draw(`${continued} …`, { font: 'bold', size: 8.5, width: 34 }, 57);
  paper.document.rect(PAGE.left, 71, PAGE.right - PAGE.left, 0.8).fill('#000000');
}

/** The foot of every page: as of when, printed by whom, which page of how many. */
export function drawFoot(paper: Paper, { when, printedBy }: Framed, page: number, pages: number): void {
  paper.document.rect(PAGE.left, 744, PAGE.right - PAGE.left, 0.8).fill('#000000');
  paper.draw(`As of ${when}. Printed by ${printedBy}. Not legal advice.`, { size: 8.5, width: 400 }, 750);
  paper.draw(
    `Page ${page} of ${pages}`,
    { font: 'bold', size: 8.5, left: 454, width: 110, align: 'right' },
    750,
  );
}
