import type { ScenePoint } from '../record/scene-section.js';
import type { FieldLanguage } from '../record/field-words/tell-field.js';
import { drawMark, namePlaces } from './draw-mark.js';
import { placeNames, type SceneName } from './place-names.js';
import type { PlacedLine, ReadScene } from './read-scene.js';
import { arrow, onSheet, SHEET, turned, type SheetPoint, type SceneShape } from './scene-shape.js';
import { sceneWords } from './scene-words.js';
import { tellDirection } from './tell-scene.js';

/** Drawn thick what one can run into, and dashed what only guides or was travelled. */
const LINE_LOOKS: Readonly<Record<string, { weight: number; dashed: boolean }>> = {
  shore: { weight: 2.4, dashed: false },
  dock: { weight: 1.6, dashed: false },
  shoal: { weight: 1, dashed: true },
  'buoy-line': { weight: 0.6, dashed: true },
  track: { weight: 0.8, dashed: true },
};
const PLAIN_LINE = { weight: 0.8, dashed: false };

/** Sheet, lines, things and legend as plain shapes, lowest first: what draws them knows nothing of boats. */
export function drawScene(scene: ReadScene, language: FieldLanguage): SceneShape[] {
  const { lines, marks, topBearing } = scene;
  const legend = [
    ...drawNorth(topBearing, language),
    ...drawFlows(scene, language),
    ...drawScale(scene.metresAcross, language),
  ];
  const signs = marks.flatMap((mark) => drawMark(mark, topBearing));
  const names = placeNames(
    [...lines.map(lineNamePlaces), ...marks.map((mark) => namePlaces(mark, topBearing, language))],
    [...legend, ...signs],
  );
  // Names above all, so that nothing is drawn through them.
  return [...lines.flatMap(drawLine), ...signs, ...legend, ...names];
}

function drawLine({ kind, points }: PlacedLine): SceneShape[] {
  if (points.length < 2) return [];
  return [
    { shape: 'line', points: points.map(onSheet), ...(LINE_LOOKS[kind ?? ''] ?? PLAIN_LINE) },
    ...(kind === 'track' ? arrow(lastLeg(points), 0.8) : []),
  ];
}

/** Above the middle of a line, else below it. */
function lineNamePlaces({ name, points }: PlacedLine): SceneName[] {
  const middle = points[Math.floor(points.length / 2)];
  if (middle === undefined || points.length < 2) return [];
  const [x, y] = onSheet(middle);
  const align = x > SHEET * 0.7 ? 'end' : 'start';
  return [y - 3.5, y + 7.5].map((down): SceneName => ({
    shape: 'words',
    at: [x + 2, down],
    words: name,
    align,
    size: 5,
  }));
}

function lastLeg(points: readonly ScenePoint[]): [SheetPoint, SheetPoint] {
  const [from = [0, 0] as ScenePoint, to = from] = points.slice(-2);
  return [onSheet(from), onSheet(to)];
}

const NORTH_AT: SheetPoint = [SHEET - 14, 20];

function drawNorth(topBearing: number, language: FieldLanguage): SceneShape[] {
  const tip = turned([0, -10], -topBearing, NORTH_AT);
  const tail = turned([0, 8], -topBearing, NORTH_AT);
  const letter = turned([0, -13], -topBearing, NORTH_AT);
  return [
    ...arrow([tail, tip], 1.2),
    {
      shape: 'words',
      at: [letter[0], letter[1] + 2],
      words: sceneWords[language].north,
      align: 'middle',
      size: 6,
    },
  ];
}

/** Wind and current, each with an arrow where it goes. */
function drawFlows(
  { windFrom, currentToward, topBearing }: ReadScene,
  language: FieldLanguage,
): SceneShape[] {
  const words = sceneWords[language];
  const flows = [
    ...(windFrom === null
      ? []
      : [{ toward: windFrom + 180, words: words.wind(tellDirection(windFrom, language)) }]),
    ...(currentToward === null
      ? []
      : [{ toward: currentToward, words: words.current(tellDirection(currentToward, language)) }]),
  ];
  return flows.flatMap(({ toward, words: text }, index): SceneShape[] => {
    const middle: SheetPoint = [10, 10 + index * 14];
    const turn = toward - topBearing;
    return [
      ...arrow([turned([0, 5], turn, middle), turned([0, -5], turn, middle)], 1),
      { shape: 'words', at: [18, middle[1] + 2], words: text, align: 'start', size: 5 },
    ];
  });
}

function drawScale(metresAcross: number | null, language: FieldLanguage): SceneShape[] {
  const words = sceneWords[language];
  const left = 8;
  const low = SHEET - 8;
  if (metresAcross === null)
    return [{ shape: 'words', at: [left, low], words: words.notToScale, align: 'start', size: 5 }];
  const metres = roundLength(metresAcross / 4);
  const right = left + (metres / metresAcross) * SHEET;
  return [
    {
      shape: 'line',
      points: [
        [left, low - 2],
        [left, low],
        [right, low],
        [right, low - 2],
      ],
      weight: 1,
      dashed: false,
    },
    { shape: 'words', at: [left, low - 4], words: words.length(metres), align: 'start', size: 5 },
  ];
}

/**
 * The longest of 1, 2, 5, 10, 20, 50 … that is not above `most`.
 * @example roundLength(37) // 20
 */
export function roundLength(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most));
  const step = [5, 2].find((one) => one * power <= most) ?? 1;
  return step * power;
}
