import type { RenterNotice } from '../../../../shared/report/renter-notice.js';
import { PAGE, Paper } from '../../platform/paper/paper.js';

/** What the page is told beside its words. */
interface Printing {
  readonly reference: string;
  /** RFC 3339. */
  readonly asOf: string;
}

/** The notice as one page, in its language, with a line for whoever gives it. */
export function drawNotice(notice: RenterNotice, { reference, asOf }: Printing): PDFKit.PDFDocument {
  const paper = new Paper({
    title: `${notice.title}: ${reference}`,
    subject: '33 CFR 173.55',
    language: notice.language === 'en' ? 'en-US' : 'es-US',
    asOf,
  });
  paper.document.y = 48;
  paper.write('H1', notice.title, { font: 'bold', size: 20 });
  paper.space(4);
  paper.rule(paper.document.y, 4);
  paper.space(10);
  paper.write('P', notice.to, { font: 'bold', size: 12 });
  paper.write('P', notice.about, { size: 10.5 });
  paper.write('P', notice.urgent, { size: 10.5 });
  const table = paper.group('Table');
  for (const { law, when, where } of notice.duties) {
    paper.space(8);
    const top = paper.document.y;
    paper.rule(top, 1.2);
    const row = paper.group('TR', table);
    paper.write('TH', law, { font: 'bold', size: 10.5, width: 206 }, row, top + 6);
    const below = paper.document.y;
    paper.write('TD', when, { font: 'bold', size: 11, left: 264, width: 300 }, row, top + 5);
    paper.write('TD', where, { size: 9.5 }, row, Math.max(below, paper.document.y));
    row.end();
  }
  table.end();
  paper.space(8);
  paper.rule(paper.document.y, 1.2);
  for (const { title, text } of notice.parts) {
    paper.space(6);
    paper.write('H2', title, { font: 'bold', size: 11 });
    paper.write('P', text);
  }
  paper.space(28);
  const { y } = paper.document;
  paper.rule(y, 0.8);
  paper.write('P', notice.given, { size: 9 }, undefined, y + 4);
  return paper.finish((page, pages) => {
    paper.document.rect(PAGE.left, 744, PAGE.right - PAGE.left, 0.8).fill('#000000');
    paper.draw(`${reference}   ${page} / ${pages}`, { size: 8.5 }, 750);
  });
}
