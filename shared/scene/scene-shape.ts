import type { ScenePoint } from '../record/scene-section.js';

/** The side of the square that everything is drawn in; x to the right, y downward, as pages and screens count. */
export const SHEET = 200;

export type SheetPoint = readonly [x: number, y: number];

export type SceneShape =
  | { shape: 'line'; points: readonly SheetPoint[]; weight: number; dashed: boolean }
  | { shape: 'area'; points: readonly SheetPoint[]; filled: boolean }
  | { shape: 'ring'; at: SheetPoint; radius: number; filled: boolean }
  | { shape: 'words'; at: SheetPoint; words: string; align: 'start' | 'middle' | 'end'; size: number };

/** `onSheet([-100, 100])` is `[0, 0]`. */
export function onSheet([across, up]: ScenePoint): SheetPoint {
  return [across + SHEET / 2, SHEET / 2 - up];
}

/** A point about 0,0 turned clockwise by so many degrees, and put at a place. */
export function turned([x, y]: SheetPoint, degrees: number, at: SheetPoint): SheetPoint {
  const angle = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [tenth(at[0] + x * cos - y * sin), tenth(at[1] + x * sin + y * cos)];
}

/** A line with a head at its second end. */
export function arrow([from, to]: readonly [SheetPoint, SheetPoint], weight: number): SceneShape[] {
  const turn = (Math.atan2(to[0] - from[0], from[1] - to[1]) * 180) / Math.PI;
  const wing = (side: number): SheetPoint => turned([side * 2, 4], turn, to);
  return [
    { shape: 'line', points: [from, to], weight, dashed: false },
    { shape: 'area', points: [to, wing(1), wing(-1)], filled: true },
  ];
}

/** The same figure on every machine, and short in a file. */
const tenth = (value: number): number => Math.round(value * 10) / 10;
