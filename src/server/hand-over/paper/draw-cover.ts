import { type Paper } from '../../platform/paper/paper.js';
import type { Cover } from './compose-cover.js';
import { drawRows } from './draw-rows.js';

/** The first page: what it is, for whom, as of when, in short, and what to know before relying on it. */
export function drawCover(paper: Paper, { reference, madeFor, rows, short, cautions }: Cover): void {
  paper.document.y = 60;
  paper.write('P', 'File of incident', { font: 'bold', size: 15 });
  paper.space(4);
  paper.rule(paper.document.y, 4);
  paper.space(12);
  paper.write('H1', reference, { font: 'bold', size: 40 });
  paper.write('P', madeFor, { font: 'bold', size: 14 });
  paper.space(8);
  drawRows(paper, rows);
  heading(paper, 'In short');
  drawRows(paper, short);
  heading(paper, 'Before you rely on it');
  const list = paper.group('L');
  for (const text of cautions) {
    paper.space(5);
    const item = paper.group('LI', list);
    paper.write('LBody', text, {}, item);
    item.end();
  }
  list.end();
}

function heading(paper: Paper, title: string): void {
  paper.space(20);
  paper.needs(80);
  paper.write('H2', title, { font: 'bold', size: 12 });
  paper.rule(paper.document.y + 1, 1.2);
  paper.space(3);
}
