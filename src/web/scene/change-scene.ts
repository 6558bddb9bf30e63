import type {
  SceneLine,
  SceneLineKind,
  SceneMark,
  ScenePoint,
  SceneSection,
  SceneThing,
} from '../../../shared/record/scene-section.js';

/** Which thing of the sketch is at hand. */
export interface Chosen {
  readonly list: 'marks' | 'lines';
  readonly id: string;
}

const EDGE = 100;
export const STEP = 5;

/** Adds a craft, person or thing in the middle, where it is seen; a craft of the record brings its id. */
export function withMark(scene: SceneSection, kind: SceneThing, craft?: string): [SceneSection, Chosen] {
  const id = freeId(scene.marks, 'm');
  const mark: SceneMark = { id, kind, across: 0, up: 0, ...(craft !== undefined && { craft }) };
  return [
    { ...scene, marks: [...(scene.marks ?? []), mark] },
    { list: 'marks', id },
  ];
}

/** Adds a line that has no points yet. */
export function withLine(scene: SceneSection, kind: SceneLineKind): [SceneSection, Chosen] {
  const id = freeId(scene.lines, 'l');
  return [
    { ...scene, lines: [...(scene.lines ?? []), { id, kind }] },
    { list: 'lines', id },
  ];
}

export function withChangedMark(scene: SceneSection, id: string, change: Changes<SceneMark>): SceneSection {
  return { ...scene, marks: (scene.marks ?? []).map((one) => (one.id === id ? changed(one, change) : one)) };
}

export function withChangedLine(scene: SceneSection, id: string, change: Changes<SceneLine>): SceneSection {
  return { ...scene, lines: (scene.lines ?? []).map((one) => (one.id === id ? changed(one, change) : one)) };
}

export function without(scene: SceneSection, { list, id }: Chosen): SceneSection {
  return list === 'marks'
    ? { ...scene, marks: (scene.marks ?? []).filter((one) => one.id !== id) }
    : { ...scene, lines: (scene.lines ?? []).filter((one) => one.id !== id) };
}

/** Where the sheet was tapped: a thing is put there, a line grows by it. */
export function withTap(scene: SceneSection, { list, id }: Chosen, [across, up]: ScenePoint): SceneSection {
  if (list === 'marks') return withChangedMark(scene, id, { across: onEdge(across), up: onEdge(up) });
  const line = scene.lines?.find((one) => one.id === id);
  const points = [...(line?.points ?? []), [onEdge(across), onEdge(up)] as const];
  return withChangedLine(scene, id, { points });
}

/** One step of a button; a line moves as a whole. */
export function withStep(scene: SceneSection, { list, id }: Chosen, [across, up]: ScenePoint): SceneSection {
  if (list === 'marks') {
    const mark = scene.marks?.find((one) => one.id === id);
    return withChangedMark(scene, id, {
      across: onEdge((mark?.across ?? 0) + across),
      up: onEdge((mark?.up ?? 0) + up),
    });
  }
  const points = scene.lines?.find((one) => one.id === id)?.points ?? [];
  return withChangedLine(scene, id, {
    points: points.map(([x, y]) => [onEdge(x + across), onEdge(y + up)] as const),
  });
}

/** A member that is undefined is taken out, as the record keeps no empty ones. */
type Changes<Item> = { [Name in keyof Item]?: Item[Name] | undefined };

function changed<Item extends object>(item: Item, change: Changes<Item>): Item {
  const members = Object.entries({ ...item, ...change }).filter(([, value]) => value !== undefined);
  return Object.fromEntries(members) as Item;
}

/** The sketch as it is kept: lines that are no lines yet, and lists of nothing, are left out. */
export function asKept(scene: SceneSection): SceneSection {
  const { marks = [], lines = [], ...sheet } = scene;
  const drawn = lines.filter(({ points = [] }) => points.length >= 2);
  return {
    ...sheet,
    ...(marks.length > 0 && { marks }),
    ...(drawn.length > 0 && { lines: drawn }),
  };
}

function freeId(items: readonly { id: string }[] | undefined, letter: string): string {
  const taken = (items ?? []).map(({ id }) => Number(id.slice(1)) || 0);
  return `${letter}${Math.max(0, ...taken) + 1}`;
}

function onEdge(value: number): number {
  return Math.round(Math.min(EDGE, Math.max(-EDGE, value)));
}
