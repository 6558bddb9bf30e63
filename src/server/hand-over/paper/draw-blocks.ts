import { PAGE, type Paper, WIDTH } from '../../platform/paper/paper.js';
import type { Block } from './blocks.js';
import { drawMap } from './draw-map.js';
import { drawRows } from './draw-rows.js';
import { drawSketch } from './draw-sketch.js';
import { drawTable } from './draw-table.js';

/** Draws one piece of the paper where the pen is; a new page where it does not fit. */
export function drawBlock(paper: Paper, block: Block): void {
  switch (block.kind) {
    case 'part':
      if (block.newPage === true) paper.document.addPage();
      return drawPart(paper, block.title);
    case 'heading':
      paper.space(10);
      paper.needs(56);
      paper.write('H3', block.title, { font: 'bold', size: 11 });
      return paper.rule(paper.document.y + 1, 0.6);
    case 'rows':
      return drawRows(paper, block.rows, block.of);
    case 'table':
      return drawTable(paper, block);
    case 'text':
      paper.space(5);
      paper.needs(Math.min(paper.heightOf(block.text), 60));
      return paper.write('P', block.text, { font: block.strong === true ? 'bold' : 'plain' });
    case 'list':
      return drawList(paper, block.items);
    case 'picture':
      return drawPicture(paper, block);
    case 'map':
      return drawMap(paper, block);
    case 'sketch':
      return drawSketch(paper, block);
    case 'sign':
      return drawSignature(paper, block.labels);
  }
}

function drawPart(paper: Paper, title: string): void {
  paper.space(22);
  paper.needs(110);
  if (paper.document.y < PAGE.top + 30) paper.document.y = PAGE.top - 12;
  paper.rule(paper.document.y, 3);
  paper.space(6);
  paper.write('H2', title, { font: 'bold', size: 15 });
  paper.space(2);
}

function drawList(paper: Paper, items: readonly string[]): void {
  const list = paper.group('L');
  for (const text of items) {
    paper.space(4);
    paper.needs(Math.min(paper.heightOf(text), 80));
    const item = paper.group('LI', list);
    paper.write('LBody', text, {}, item);
    item.end();
  }
  list.end();
}

/** A picture is at most so large that two stand on a page, each with its words at its side. */
const PICTURE = { width: 316, height: 237 } as const;
const BESIDE = { left: PAGE.left + PICTURE.width + 14, width: WIDTH - PICTURE.width - 14 } as const;

function drawPicture(
  paper: Paper,
  { title, caption, lines, content }: Extract<Block, { kind: 'picture' }>,
): void {
  const fitted = content === undefined ? undefined : fit(content, PICTURE.width, PICTURE.height);
  const place = fitted === undefined ? {} : BESIDE;
  const looks = [
    { type: 'Caption', text: caption, look: { font: 'bold', size: 10, ...place } as const },
    ...lines.map((text) => ({ type: 'P', text, look: { size: 8.5, ...place } as const })),
  ];
  const words = looks.reduce((sum, { text, look }) => sum + paper.heightOf(text, look) + GAP, 0);
  paper.space(14);
  paper.needs(Math.max(fitted?.height ?? 0, words) + 20);
  const part = paper.group('Sect');
  paper.write('H3', title, { font: 'bold', size: 11 }, part);
  paper.space(3);
  const top = paper.document.y;
  if (content !== undefined && fitted !== undefined)
    paper.picture({ content: content.bytes, alt: caption, ...fitted }, PAGE.left, part);
  const below = paper.document.y;
  paper.document.y = top;
  for (const { type, text, look } of looks) {
    paper.write(type, text, look, part);
    paper.space(GAP);
  }
  paper.document.y = Math.max(below, paper.document.y);
  part.end();
}

/** Between the lines beside a picture. */
const GAP = 3;

function fit({ width, height }: { width: number; height: number }, widest: number, highest: number) {
  const scale = Math.min(widest / width, highest / height);
  return { width: width * scale, height: height * scale };
}

function drawSignature(paper: Paper, labels: readonly string[]): void {
  for (const label of labels) {
    paper.space(30);
    paper.needs(40);
    paper.rule(paper.document.y, 0.8, PAGE.left, 380);
    paper.space(3);
    paper.write('P', label, { size: 9 });
  }
}
