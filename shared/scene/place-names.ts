import { SHEET, type SceneShape } from './scene-shape.js';

export type SceneName = Extract<SceneShape, { shape: 'words' }>;

/** A part of the sheet, in its own units. */
interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Of the height of bold letters, which no program measures alike: their usual width, and what stands below the line. */
const WIDE = 0.6;
const BELOW = 0.25;

/**
 * Puts each name where it covers least of what is drawn and of the names before it, and stays on the sheet; of equal
 * places the first.
 * @param choices for each name its places, the best first
 */
export function placeNames(
  choices: readonly (readonly SceneName[])[],
  drawn: readonly SceneShape[],
): SceneName[] {
  const taken = drawn.map(boxOf);
  return choices.flatMap((places) => {
    const costs = places.map((place) => costOf(boxOf(place), taken));
    const best = places[costs.indexOf(Math.min(...costs))];
    if (best === undefined) return [];
    taken.push(boxOf(best));
    return [best];
  });
}

function costOf(box: Box, taken: readonly Box[]): number {
  const outside = areaOf(box) - overlap(box, { left: 0, top: 0, right: SHEET, bottom: SHEET });
  return taken.reduce((sum, one) => sum + overlap(box, one), outside);
}

const areaOf = ({ left, right, top, bottom }: Box): number => (right - left) * (bottom - top);

function overlap(one: Box, other: Box): number {
  const across = Math.min(one.right, other.right) - Math.max(one.left, other.left);
  const down = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
  return Math.max(0, across) * Math.max(0, down);
}

function boxOf(shape: SceneShape): Box {
  if (shape.shape === 'words') {
    const width = shape.words.length * shape.size * WIDE;
    const [x, y] = shape.at;
    const left = x - width * { start: 0, middle: 0.5, end: 1 }[shape.align];
    return { left, right: left + width, top: y - shape.size, bottom: y + shape.size * BELOW };
  }
  if (shape.shape === 'ring') {
    const {
      at: [x, y],
      radius,
    } = shape;
    return { left: x - radius, right: x + radius, top: y - radius, bottom: y + radius };
  }
  const across = shape.points.map(([x]) => x);
  const down = shape.points.map(([, y]) => y);
  return {
    left: Math.min(...across) - EDGE,
    right: Math.max(...across) + EDGE,
    top: Math.min(...down) - EDGE,
    bottom: Math.max(...down) + EDGE,
  };
}

/** Even a line that runs straight takes room. */
const EDGE = 0.5;
