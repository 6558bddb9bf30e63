import type { ScenePoint } from '../record/scene-section.js';
import type { FieldLanguage } from '../record/field-words/tell-field.js';
import { drawMark } from './draw-mark.js';
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
  return [
    ...scene.lines.flatMap(drawLine),
    ...scene.marks.flatMap((mark) => drawMark(mark, scene.topBearing, language)),
    ...drawNorth(scene.topBearing, language),
    ...drawFlows(scene, language),
    ...drawScale(scene.metresAcross, language),
  ];
}

function drawLine({ kind, name, points }: PlacedLine): SceneShape[] {
  const [first] = points;
  if (first === undefined || points.length < 2) return [];
  const middle = onSheet(points[Math.floor(points.length / 2)] ?? first);
  const words: SceneShape = {
    shape: 'words',
    at: [middle[0] + 2, middle[1] - 2.5],
    words: name,
    align: middle[0] > SHEET * 0.7 ? 'end' : 'start',
    size: 5,
  };
  return [
    { shape: 'line', points: points.map(onSheet), ...(LINE_LOOKS[kind ?? ''] ?? PLAIN_LINE) },
    ...(kind === 'track' ? arrow(lastLeg(points), 0.8) : []),
    words,
  ];
}

function lastLeg(points: readonly ScenePoint[]): [SheetPoint, SheetPoint] {
  const [from = [0, 0] as ScenePoint, to = from] = points.slice(-2);
  return [onSheet(from), onSheet(to)];
}

const NORTH_AT: SheetPoint = [SHEET - 14, 16];

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
    { shape: 'words', at: [left, low - 4], words: words.metres(metres), align: 'start', size: 5 },
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
