import type { Known } from '../call/known.js';
import {
  SCENE_LINES,
  SCENE_MOVEMENTS,
  SCENE_THINGS,
  type SceneLine,
  type SceneLineKind,
  type SceneMark,
  type SceneMovement,
  type ScenePoint,
  type SceneSection,
  type SceneThing,
} from '../record/scene-section.js';
import { Items, KnownFact, Needed, Value, type ValueRule } from './record-members.js';
import { id, instant, line, number, oneOf, text } from './record-values.js';

const onSheet = number(-100, 100, 'hundredths of half the sheet,');
const bearing = number(0, 360, 'degrees true');

const MOST_POINTS = 200;
const POINTS = `a list of 2 to ${MOST_POINTS} points, each [across, up] from -100 to 100`;
const points: ValueRule = {
  expected: POINTS,
  faultOf: (value) =>
    Array.isArray(value) && value.length >= 2 && value.length <= MOST_POINTS && value.every(isPoint)
      ? null
      : `Must be ${POINTS}.`,
  schema: {
    type: 'array',
    minItems: 2,
    maxItems: MOST_POINTS,
    items: { type: 'array', minItems: 2, maxItems: 2, items: onSheet.schema },
  },
};

function isPoint(value: unknown): boolean {
  return Array.isArray(value) && value.length === 2 && value.every((one) => onSheet.faultOf(one) === null);
}

class SceneMarkDto implements SceneMark {
  @Needed(id)
  id: string;

  @Value(oneOf(SCENE_THINGS))
  kind?: SceneThing;

  @Value(id)
  craft?: string;

  @Value(line)
  label?: string;

  @Value(onSheet)
  across?: number;

  @Value(onSheet)
  up?: number;

  @Value(bearing)
  heading?: number;

  @Value(oneOf(SCENE_MOVEMENTS))
  movement?: SceneMovement;
}

class SceneLineDto implements SceneLine {
  @Needed(id)
  id: string;

  @Value(oneOf(SCENE_LINES))
  kind?: SceneLineKind;

  @Value(id)
  craft?: string;

  @Value(line)
  label?: string;

  @Value(points)
  points?: ScenePoint[];
}

export class SceneDto implements SceneSection {
  @KnownFact(instant)
  shows?: Known<string>;

  @Value(line)
  drawnBy?: string;

  @KnownFact(text)
  drawnFrom?: Known<string>;

  @KnownFact(number(5, 20_000, 'metres'))
  metresAcross?: Known<number>;

  @Value(bearing)
  topBearing?: number;

  @KnownFact(bearing)
  windFrom?: Known<number>;

  @KnownFact(bearing)
  currentToward?: Known<number>;

  @Items(() => SceneMarkDto)
  marks?: SceneMarkDto[];

  @Items(() => SceneLineDto)
  lines?: SceneLineDto[];

  @KnownFact(text)
  remarks?: Known<string>;
}
