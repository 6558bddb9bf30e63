import type { SceneMovement, SceneThing } from '../record/scene-section.js';
import { fieldWords, type FieldLanguage } from '../record/field-words/tell-field.js';
import type { PlacedMark } from './read-scene.js';
import { arrow, onSheet, SHEET, turned, type SceneShape, type SheetPoint } from './scene-shape.js';

/** A hull from above with its bow at the top. */
const HULL: readonly SheetPoint[] = [
  [0, -8],
  [3.4, -2],
  [3.4, 7],
  [-3.4, 7],
  [-3.4, -2],
];
/** Where the heading is not known nothing may look like a bow. */
const NO_BOW: readonly SheetPoint[] = [
  [0, -5],
  [5, 0],
  [0, 5],
  [-5, 0],
];
const TRIANGLE: readonly SheetPoint[] = [
  [0, -5],
  [4, 3],
  [-4, 3],
];

/** One thing with its name; our craft are filled and others empty, and the name says which. */
export function drawMark(mark: PlacedMark, topBearing: number, language: FieldLanguage): SceneShape[] {
  if (mark.at === null) return [];
  const at = onSheet(mark.at);
  const turn = mark.heading === null ? null : mark.heading - topBearing;
  return [...SIGNS[mark.kind](at, turn, mark.movement), nameBeside(mark, at, turn, language)];
}

type DrawSign = (at: SheetPoint, turn: number | null, movement: SceneMovement) => SceneShape[];

const craft =
  (filled: boolean): DrawSign =>
  (at, turn, movement) => [
    {
      shape: 'area',
      points: (turn === null ? NO_BOW : HULL).map((one) => turned(one, turn ?? 0, at)),
      filled,
    },
    ...(turn !== null && movement === 'under-way'
      ? arrow([turned([0, -9], turn, at), turned([0, -22], turn, at)], 1)
      : []),
  ];

const cross: DrawSign = ([x, y]) => [
  { shape: 'line', points: [[x - 3.5, y - 3.5], [x + 3.5, y + 3.5]], weight: 1.4, dashed: false }, // prettier-ignore
  { shape: 'line', points: [[x - 3.5, y + 3.5], [x + 3.5, y - 3.5]], weight: 1.4, dashed: false }, // prettier-ignore
];

const SIGNS: Readonly<Record<SceneThing, DrawSign>> = {
  'our-craft': craft(true),
  'other-craft': craft(false),
  person: (at) => [{ shape: 'ring', at, radius: 2.6, filled: true }],
  buoy: (at) => [{ shape: 'area', points: TRIANGLE.map((one) => turned(one, 0, at)), filled: false }],
  obstacle: cross,
  contact: (at, ...rest) => [{ shape: 'ring', at, radius: 5.5, filled: false }, ...cross(at, ...rest)],
  other: (at) => [{ shape: 'ring', at, radius: 2.6, filled: false }],
};

function nameBeside(
  { name, movement, kind }: PlacedMark,
  [x, y]: SheetPoint,
  turn: number | null,
  language: FieldLanguage,
): SceneShape {
  const atRight = hasRoomAtRight(x, turn);
  const moves = kind === 'our-craft' || kind === 'other-craft' || movement !== 'unknown';
  const away = kind === 'person' || kind === 'other' ? 5 : 9;
  const how = fieldWords(language).values.sceneMovement[movement].toLowerCase();
  return {
    shape: 'words',
    at: [x + (atRight ? away : -away), y + 2],
    words: moves && movement !== 'unknown' ? `${name}, ${how}` : name,
    align: atRight ? 'start' : 'end',
    size: 5.5,
  };
}

/** Behind a craft rather than across its way; else where the sheet has room. */
function hasRoomAtRight(x: number, turn: number | null): boolean {
  const toTheRight = turn === null ? 0 : Math.sin((turn * Math.PI) / 180);
  if (Math.abs(toTheRight) < 0.3 || x < SHEET * 0.3 || x > SHEET * 0.7) return x <= SHEET * 0.62;
  return toTheRight < 0;
}
