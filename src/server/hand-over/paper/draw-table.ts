import { PAGE, type Paper, WIDTH } from '../../platform/paper/paper.js';
import type { Block, PaperColumn } from './blocks.js';

type Table = Extract<Block, { kind: 'table' }>;

const GAP = 10;
const SIZE = 9.5;

/** A table with a heading over each column, which stands again on every page that it runs over to. */
export function drawTable(paper: Paper, { columns, rows, total }: Table): void {
  const places = placesOf(columns);
  const table = paper.group('Table');
  paper.space(4);
  paper.needs(46);
  const head = paper.group('TR', table);
  drawCells(
    paper,
    places,
    columns.map(({ title }) => title),
    head,
    'column',
  );
  head.end();
  paper.rule(paper.document.y + 2, 1.2);
  paper.space(5);
  for (const cells of rows) {
    const height = heightOf(paper, places, cells);
    if (paper.document.y + height > PAGE.bottom) {
      paper.document.addPage();
      paper.artifact('Layout', () => {
        const top = paper.document.y;
        places.forEach(({ title, left, width, align }) =>
          paper.draw(title, { font: 'bold', size: 8.5, left, width, align }, top),
        );
        const height = Math.max(
          ...places.map(({ title, width }) => paper.heightOf(title, { font: 'bold', size: 8.5, width })),
        );
        paper.document.rect(PAGE.left, top + height + 2, WIDTH, 1.2).fill('#000000');
        paper.document.y = top + height + 7;
      });
    }
    const row = paper.group('TR', table);
    drawCells(paper, places, cells, row, 'row');
    row.end();
    paper.space(4);
  }
  if (total !== undefined) drawTotal(paper, places, total, table);
  table.end();
}

function drawTotal(
  paper: Paper,
  places: readonly Placed[],
  cells: readonly string[],
  table: PDFKit.PDFStructureElement,
): void {
  paper.needs(heightOf(paper, places, cells) + 8);
  paper.rule(paper.document.y, 0.8);
  paper.space(4);
  const row = paper.group('TR', table);
  drawCells(paper, places, cells, row, 'total');
  row.end();
}

interface Placed extends Omit<PaperColumn, 'align'> {
  readonly left: number;
  readonly width: number;
  readonly align: 'left' | 'right';
}

function placesOf(columns: readonly PaperColumn[]): Placed[] {
  let left: number = PAGE.left;
  return columns.map((column, place) => {
    const width = column.share * WIDTH - (place === columns.length - 1 ? 0 : GAP);
    const placed = { ...column, left, width, align: column.align ?? 'left' } as const;
    left += column.share * WIDTH;
    return placed;
  });
}

function heightOf(paper: Paper, places: readonly Placed[], cells: readonly string[]): number {
  return Math.max(
    ...places.map(({ width }, place) => paper.heightOf(cells[place] ?? '', { size: SIZE, width })),
  );
}

/** One row; the first cell of a row heads it, and those of the first row head their columns. */
function drawCells(
  paper: Paper,
  places: readonly Placed[],
  cells: readonly string[],
  row: PDFKit.PDFStructureElement,
  as: 'column' | 'row' | 'total',
): void {
  const top = paper.document.y;
  let bottom = top;
  places.forEach(({ left, width, align }, place) => {
    const bold = as !== 'row';
    const look = {
      size: as === 'column' ? 8.5 : SIZE,
      left,
      width,
      align,
      font: bold ? 'bold' : 'plain',
    } as const;
    const type = as === 'column' || place === 0 ? 'TH' : 'TD';
    paper.write(type, cells[place] ?? '', as === 'column' ? { ...look, scope: 'Column' } : look, row, top);
    bottom = Math.max(bottom, paper.document.y);
  });
  paper.document.y = bottom;
}
