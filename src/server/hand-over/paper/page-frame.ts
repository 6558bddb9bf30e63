import { PAGE, type Paper } from '../../platform/paper/paper.js';

/** What every page of a packet says of the packet. */
export interface PageFrame {
  readonly reference: string;
  readonly madeFor: string;
  /** As-of instant, in words. */
  readonly asOf: string;
  readonly prefix: string;
}

const MOST_PARTS = 3;

/** The head of every page but the cover, and the foot of every page: a page alone says what it is of. */
export function drawFrame(
  paper: Paper,
  { reference, madeFor, asOf, prefix }: PageFrame,
  page: number,
  pages: number,
  parts: readonly string[],
): void {
  if (page > 1) {
    paper.draw(`Incident ${reference}`, { font: 'bold', size: 9, width: 116 }, 34);
    const on = parts.length > MOST_PARTS ? [...parts.slice(0, MOST_PARTS), '…'] : parts;
    paper.draw(on.join(' · '), { size: 9, left: 168, width: 396, align: 'right' }, 34);
    paper.document.rect(PAGE.left, 50, PAGE.right - PAGE.left, 3).fill('#000000');
  }
  paper.document.rect(PAGE.left, 741, PAGE.right - PAGE.left, 0.8).fill('#000000');
  paper.draw(cut(madeFor), { size: 8, width: 326 }, 747);
  paper.draw(`As of ${asOf}. Not legal advice.`, { size: 8, width: 326 }, 757);
  paper.draw(
    `${prefix}-${page}    page ${page} of ${pages}`,
    { font: 'bold', size: 8.5, left: 380, width: 184, align: 'right' },
    747,
  );
}

const LONGEST_NAME = 64;

/** A foot has one line for it; the whole name stands on the cover. */
function cut(text: string): string {
  return text.length <= LONGEST_NAME ? text : `${text.slice(0, LONGEST_NAME - 1)}…`;
}
