import { drawScene } from '../../../../shared/scene/draw-scene.js';
import { SHEET, type SceneShape, type SheetPoint } from '../../../../shared/scene/scene-shape.js';
import { PAGE, type Paper } from '../../platform/paper/paper.js';
import type { Block } from './blocks.js';

/** The side of the drawn sheet, in points. */
const SIDE = 300;
const SCALE = SIDE / SHEET;

/** The sheet with its frame, and below it the sentences that say the same. */
export function drawSketch(paper: Paper, { scene, lines }: Extract<Block, { kind: 'sketch' }>): void {
  paper.space(10);
  paper.needs(SIDE + 24);
  const { document } = paper;
  const top = document.y;
  paper.drawing(`Sketch of the scene, seen from above. ${lines.join(' ')}`, () => {
    document.save();
    document.rect(PAGE.left, top, SIDE, SIDE).clip();
    for (const shape of drawScene(scene, 'en')) drawShape(paper, shape, top);
    document.restore();
    document.lineWidth(1.2).rect(PAGE.left, top, SIDE, SIDE).stroke();
  });
  document.y = top + SIDE + 6;
  const list = paper.group('L');
  for (const text of lines) {
    paper.space(2);
    paper.needs(Math.min(paper.heightOf(text), 80));
    const item = paper.group('LI', list);
    paper.write('LBody', text, { size: 9 }, item);
    item.end();
  }
  list.end();
}

function drawShape(paper: Paper, shape: SceneShape, top: number): void {
  const { document } = paper;
  const at = ([x, y]: SheetPoint): [number, number] => [PAGE.left + x * SCALE, top + y * SCALE];
  switch (shape.shape) {
    case 'line': {
      const [first, ...rest] = shape.points.map(at);
      if (first === undefined) return;
      document.lineWidth(shape.weight * SCALE).moveTo(...first);
      for (const point of rest) document.lineTo(...point);
      if (shape.dashed) document.dash(4 * SCALE, { space: 3 * SCALE });
      document.stroke().undash();
      return;
    }
    case 'area':
      document.lineWidth(0.9 * SCALE).polygon(...shape.points.map(at));
      if (shape.filled) document.fill();
      else document.stroke();
      return;
    case 'ring':
      document.lineWidth(0.9 * SCALE).circle(...at(shape.at), shape.radius * SCALE);
      if (shape.filled) document.fill();
      else document.stroke();
      return;
    case 'words':
      drawWords(paper, shape, at(shape.at));
  }
}

/** Words stand on their baseline at a point of the sheet, as they do on a screen. */
function drawWords(
  paper: Paper,
  { words, align, size }: Extract<SceneShape, { shape: 'words' }>,
  [x, y]: [number, number],
): void {
  const points = size * SCALE;
  const width = paper.widthOf(words, { font: 'bold', size: points });
  const shares = { start: 0, middle: 0.5, end: 1 };
  const left = x - width * shares[align];
  // Nothing runs through a name.
  paper.document.rect(left - 1, y - points * 0.85, width + 2, points * 1.1).fill('#ffffff');
  paper.document.fillColor('#000000');
  paper.draw(words, { font: 'bold', size: points, left, width: width + 2 }, y - points * 0.8);
}
