import { findStates } from '../../../../shared/place/find-states.js';
import { metresPerDegree } from '../../../../shared/place/metres-per-degree.js';
import { STATE_NAMES } from '../../../../shared/place/state-codes.js';
import { NO_STATE, type StateLines } from '../../../../shared/place/state-lines.js';
import type { Position } from '../../../../shared/record/time-and-place.js';
import { PAGE, type Paper } from '../../platform/paper/paper.js';
import { loadStateLines } from '../../place/place.api.js';
import type { Block } from './blocks.js';

type MapBlock = Extract<Block, { kind: 'map' }>;

const SIZE = 164;
const KM_PER_MILE = 1.609344;
/** Kilometres that a map is wide: wide enough to see which states, and narrow enough to see which side. */
const WIDE_KM = 400;
const NEAR_KM = 40;

/** Two small maps of one position beside the words that say the same. */
export function drawMap(paper: Paper, { position, lines }: MapBlock): void {
  paper.space(10);
  paper.needs(SIZE + 14);
  const top = paper.document.y;
  const stateLines = loadStateLines();
  const squares = [
    { km: WIDE_KM, left: PAGE.left, top, edge: SIZE },
    { km: NEAR_KM, left: PAGE.left + SIZE + 8, top, edge: 104 },
  ];
  paper.drawing(`Map: the position among the lines of the states. ${lines.join(' ')}`, () => {
    for (const square of squares) drawSquare(paper, stateLines, position, square);
  });
  paper.artifact('Layout', () => {
    for (const { km, left, edge } of squares)
      paper.draw(
        `${km} km across (${Math.round(km / KM_PER_MILE)} miles)`,
        { size: 8, left, width: edge },
        top + edge + 2,
      );
  });
  const left = PAGE.left + SIZE + 8 + 104 + 12;
  paper.document.y = top;
  lines.forEach((line, place) => {
    const look = {
      size: place === 0 ? 11 : 9,
      font: place === 0 ? 'bold' : 'plain',
      left,
      width: PAGE.right - left,
    } as const;
    paper.write('P', line, look);
    paper.space(3);
  });
  paper.document.y = Math.max(paper.document.y, top + SIZE + 12) + 4;
}

interface Square {
  readonly km: number;
  readonly left: number;
  readonly top: number;
  readonly edge: number;
}

function drawSquare(paper: Paper, lines: StateLines, position: Position, square: Square): void {
  const { document } = paper;
  const { left, top, edge, km } = square;
  const at = projection(position, square);
  document.save();
  document.rect(left, top, edge, edge).clip();
  document.lineWidth(1);
  for (let one = 0; one + 1 < lines.longitude.length; one += 1) {
    if (lines.oneSide[one] === NO_STATE && lines.otherSide[one] === NO_STATE) continue;
    const [from, to] = [pointOf(lines, one), pointOf(lines, one + 1)].map(at);
    if (from === undefined || to === undefined || isOutside(from, to, square)) continue;
    document.moveTo(...from).lineTo(...to);
  }
  document.stroke('#000000');
  for (const { state, x, y } of labelsOf(lines, position, square)) {
    paper.draw(STATE_NAMES[state] ?? state, { size: edge > 150 ? 8.5 : 7, left: x - 40, width: 80 }, y);
  }
  const [x, y] = [left + edge / 2, top + edge / 2];
  document.lineWidth(2).circle(x, y, 6).stroke('#000000').circle(x, y, 1.8).fill('#000000');
  document.restore();
  document.lineWidth(0.8).rect(left, top, edge, edge).stroke('#000000');
  drawScale(paper, square, km / 4);
}

type Point = readonly [x: number, y: number];

/** A plane that touches the earth at the position; north is up. */
function projection({ latitude, longitude }: Position, { km, left, top, edge }: Square) {
  const metres = metresPerDegree(latitude);
  const scale = edge / (km * 1000);
  return ([lon, lat]: Point): [number, number] => [
    left + edge / 2 + (((lon - longitude + 540) % 360) - 180) * metres.longitude * scale,
    top + edge / 2 - (lat - latitude) * metres.latitude * scale,
  ];
}

const pointOf = ({ longitude, latitude }: StateLines, place: number): Point => [
  longitude[place] ?? 0,
  latitude[place] ?? 0,
];

function isOutside(from: Point, to: Point, { left, top, edge }: Square): boolean {
  const [x, y] = [
    [from[0], to[0]],
    [from[1], to[1]],
  ] as const;
  return (
    Math.max(...x) < left ||
    Math.min(...x) > left + edge ||
    Math.max(...y) < top ||
    Math.min(...y) > top + edge
  );
}

const GRID = 9;

/** Where the name of each state stands: amid the places of a coarse grid that lie in it. */
function labelsOf(lines: StateLines, { latitude, longitude }: Position, { km, left, top, edge }: Square) {
  const metres = metresPerDegree(latitude);
  const found = new Map<string, { x: number; y: number; count: number }>();
  for (let row = 1; row < GRID; row += 1) {
    for (let column = 1; column < GRID; column += 1) {
      const [east, north] = [column / GRID - 0.5, 0.5 - row / GRID];
      const lat = latitude + (north * km * 1000) / metres.latitude;
      const lon = longitude + (east * km * 1000) / metres.longitude;
      if (Math.abs(lat) > 89 || Math.abs(lon) > 180) continue;
      const { inside } = findStates(lines, lat, lon, 0);
      if (inside === null) continue;
      const one = found.get(inside.state) ?? { x: 0, y: 0, count: 0 };
      found.set(inside.state, { x: one.x + (east + 0.5), y: one.y + (0.5 - north), count: one.count + 1 });
    }
  }
  return [...found]
    .filter(([, { count }]) => count >= 3)
    .map(([state, { x, y, count }]) => ({
      state,
      x: Math.min(Math.max(left + (x / count) * edge, left + 44), left + edge - 40),
      // Scale and arrow keep the edges.
      y: awayFromMiddle(Math.min(top + (y / count) * edge, top + edge - 38), top + edge / 2),
    }));
}

/** The sign of the position keeps its place: a name that would lie under it moves off. */
function awayFromMiddle(y: number, middle: number): number {
  if (Math.abs(y + 5 - middle) > 16) return y;
  return y < middle - 5 ? middle - 24 : middle + 14;
}

function drawScale(paper: Paper, { left, top, edge, km }: Square, length: number): void {
  const width = (length / km) * edge;
  const y = top + edge - 8;
  paper.document.rect(left + 8, y, width, 2).fill('#000000');
  paper.draw(`${length} km`, { size: 7.5, left: left + 8, width: 60 }, y - 11);
  paper.draw('N ↑', { size: 8, left: left + edge - 24, width: 24 }, top + 4);
}
