import { tellZonedTime } from '../../../../shared/report/tell-value.js';
import { PAGE, Paper } from '../../platform/paper/paper.js';
import type { PaperRow } from '../paper/blocks.js';
import { composeNotice, type NoticeMatter } from './compose-notice.js';

const LABEL = { left: PAGE.left, width: 130, size: 9 } as const;
const TEXT = { left: 186, width: PAGE.right - 186, size: 9.5 } as const;

export interface NoticePage extends NoticeMatter {
  readonly number: string;
  /** RFC 3339. */
  readonly madeAt: string;
  readonly madeBy: string;
}

/**
 * The first notice of one incident under one policy: one page for a claims mailbox. The same matter is the same bytes.
 * @returns the PDF as a stream
 */
export function drawNoticePage(page: NoticePage): PDFKit.PDFDocument {
  const { record, covering, number, madeAt, madeBy, timeZone } = page;
  const { reference } = record;
  const paper = new Paper({
    title: `First notice of incident ${reference}, policy ${covering.policy.number}`,
    subject: 'First notice to an insurer',
    language: 'en-US',
    asOf: madeAt,
    pagePrefix: `${reference}-${number.slice(0, 8).toUpperCase()}-`,
  });
  paper.document.y = 40;
  paper.write('H1', `First notice: incident ${reference}`, { font: 'bold', size: 17 });
  paper.space(3);
  paper.rule(paper.document.y, 4);
  paper.space(6);
  paper.write(
    'P',
    `As of ${tellZonedTime(madeAt, timeZone)}, by ${madeBy}. It tells what is recorded so far, and admits nothing.`,
    { size: 9 },
  );
  const { policy, what, hurt, craft, clocks } = composeNotice(page);
  drawPart(paper, 'Policy', policy);
  drawPart(paper, 'What happened', what);
  drawPart(paper, 'Who is hurt', hurt);
  drawPart(paper, 'Craft scheduled in the policy', craft);
  drawPart(paper, 'Clocks, and whom to call', clocks);
  return paper.finish((one, pages) => {
    paper.document.rect(PAGE.left, 741, PAGE.right - PAGE.left, 0.8).fill('#000000');
    paper.draw(
      'What is not written here was not recorded or is withheld: it is never a no. Not legal advice.',
      { size: 8, width: 346 },
      747,
    );
    paper.draw(
      `${reference}-${number.slice(0, 8).toUpperCase()}-${one}    page ${one} of ${pages}`,
      { font: 'bold', size: 8.5, left: 400, width: 164, align: 'right' },
      747,
    );
  });
}

function drawPart(paper: Paper, title: string, rows: readonly PaperRow[]): void {
  paper.space(8);
  paper.rule(paper.document.y, 1.2);
  paper.space(3);
  paper.write('H2', title, { font: 'bold', size: 11.5 });
  const table = paper.group('Table');
  for (const { label, text } of rows) {
    paper.space(2);
    const top = paper.document.y;
    const row = paper.group('TR', table);
    paper.write('TH', label, LABEL, row, top);
    const below = paper.document.y;
    paper.write('TD', text, TEXT, row, top);
    row.end();
    paper.document.y = Math.max(below, paper.document.y);
  }
  table.end();
}
