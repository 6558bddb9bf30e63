import type { Known } from '../call/known.js';
import {
  SCENE_LINES,
  SCENE_MOVEMENTS,
  SCENE_THINGS,
  type SceneLineKind,
  type SceneMovement,
  type ScenePoint,
  type SceneSection,
  type SceneThing,
} from '../record/scene-section.js';

/** A thing with its place; what has no place cannot be drawn, and is told as such. */
export interface PlacedMark {
  readonly id: string;
  readonly kind: SceneThing;
  readonly name: string;
  readonly at: ScenePoint | null;
  readonly heading: number | null;
  readonly movement: SceneMovement;
}

export interface PlacedLine {
  readonly id: string;
  readonly kind: SceneLineKind | null;
  readonly name: string;
  readonly points: readonly ScenePoint[];
}

/** A sketch as it is drawn and told: names filled in, and nothing in it that is no figure. */
export interface ReadScene {
  readonly metresAcross: number | null;
  readonly topBearing: number;
  readonly windFrom: number | null;
  readonly currentToward: number | null;
  readonly marks: readonly PlacedMark[];
  readonly lines: readonly PlacedLine[];
}

/**
 * A sketch made ready. What was masked before it came here stands in it as text or not at all, and is left out.
 * @param craftName what a craft of the record is called, by its id
 * @param kindName what a thing is called that has no name of its own
 */
export function readScene(
  section: SceneSection,
  craftName: (id: string) => string | undefined,
  kindName: (kind: SceneThing | SceneLineKind | null) => string,
): ReadScene {
  const nameOf = (label: unknown, craft: unknown, kind: SceneThing | SceneLineKind | null): string =>
    textIn(label) ?? (typeof craft === 'string' ? craftName(craft) : undefined) ?? kindName(kind);
  return {
    metresAcross: factIn(section.metresAcross),
    topBearing: figureIn(section.topBearing) ?? 0,
    windFrom: factIn(section.windFrom),
    currentToward: factIn(section.currentToward),
    marks: (section.marks ?? []).map(({ id, craft, label, across, up, heading, ...words }) => {
      const kind = oneOf(SCENE_THINGS, words.kind) ?? 'other';
      return {
        id,
        kind,
        name: nameOf(label, craft, kind),
        at: pointIn(across, up),
        heading: figureIn(heading),
        movement: oneOf(SCENE_MOVEMENTS, words.movement) ?? 'unknown',
      };
    }),
    lines: (section.lines ?? []).map(({ id, craft, label, points, ...words }) => {
      const kind = oneOf(SCENE_LINES, words.kind) ?? null;
      return { id, kind, name: nameOf(label, craft, kind), points: Array.isArray(points) ? points : [] };
    }),
  };
}

function pointIn(across: unknown, up: unknown): ScenePoint | null {
  const [x, y] = [figureIn(across), figureIn(up)];
  return x === null || y === null ? null : [x, y];
}

const oneOf = <T extends string>(words: readonly T[], value: unknown): T | undefined =>
  words.find((word) => word === value);
const figureIn = (value: unknown): number | null => (typeof value === 'number' ? value : null);
const textIn = (value: unknown): string | undefined =>
  typeof value === 'string' && value.trim() !== '' ? value.trim() : undefined;
const factIn = (fact: Known<number> | undefined): number | null => figureIn(fact?.value);
