import type { SceneMovement, SceneThing } from '../record/scene-section.js';
import { fieldWords, type FieldLanguage } from '../record/field-words/tell-field.js';
import type { PlacedMark } from './read-scene.js';
import type { SceneName } from './place-names.js';
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

/** The sign of one thing; our craft are filled and others empty, and the name says which. */
export function drawMark(mark: PlacedMark, topBearing: number): SceneShape[] {
  if (mark.at === null) return [];
  return SIGNS[mark.kind](onSheet(mark.at), turnOf(mark, topBearing), mark.movement);
}

const turnOf = ({ heading }: PlacedMark, topBearing: number): number | null =>
  heading === null ? null : heading - topBearing;

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

/** Where the name of a thing may stand, the best place first: behind it, before it, below, above. */
export function namePlaces(mark: PlacedMark, topBearing: number, language: FieldLanguage): SceneName[] {
  const { name, movement, kind, at } = mark;
  if (at === null) return [];
  const [x, y] = onSheet(at);
  const moves = kind === 'our-craft' || kind === 'other-craft' || movement !== 'unknown';
  const away = kind === 'person' || kind === 'other' ? 5 : 9;
  const how = fieldWords(language).values.sceneMovement[movement].toLowerCase();
  const words = moves && movement !== 'unknown' ? `${name}, ${how}` : name;
  const shape = { shape: 'words', words, size: 5.5 } as const;
  const beside: SceneName[] = [
    { ...shape, at: [x + away, y + 2], align: 'start' },
    { ...shape, at: [x - away, y + 2], align: 'end' },
  ];
  if (!hasRoomAtRight(x, turnOf(mark, topBearing))) beside.reverse();
  return [
    ...beside,
    { ...shape, at: [x, y + away + 6], align: 'middle' },
    { ...shape, at: [x, y - away - 3], align: 'middle' },
  ];
}

/** Behind a craft rather than across its way; else where the sheet has room. */
function hasRoomAtRight(x: number, turn: number | null): boolean {
  const toTheRight = turn === null ? 0 : Math.sin((turn * Math.PI) / 180);
  if (Math.abs(toTheRight) < 0.3 || x < SHEET * 0.3 || x > SHEET * 0.7) return x <= SHEET * 0.62;
  return toTheRight < 0;
}
