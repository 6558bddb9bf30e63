import type { Known } from '../call/known.js';

export type SceneThing = 'our-craft' | 'other-craft' | 'person' | 'buoy' | 'obstacle' | 'contact' | 'other';
export const SCENE_THINGS: readonly SceneThing[] = [
  'our-craft',
  'other-craft',
  'person',
  'buoy',
  'obstacle',
  'contact',
  'other',
];

export type SceneMovement = 'under-way' | 'drifting' | 'stopped' | 'unknown';
export const SCENE_MOVEMENTS: readonly SceneMovement[] = ['under-way', 'drifting', 'stopped', 'unknown'];

export type SceneLineKind = 'shore' | 'dock' | 'shoal' | 'buoy-line' | 'track';
export const SCENE_LINES: readonly SceneLineKind[] = ['shore', 'dock', 'shoal', 'buoy-line', 'track'];

/** From the middle of the sheet, in hundredths of half its width: `[-100, 100]` is the upper left corner. */
export type ScenePoint = readonly [across: number, up: number];

/** One thing on or in the water. */
export interface SceneMark {
  id: string;
  kind?: SceneThing;
  /** Id of a craft of the section on craft. */
  craft?: string;
  label?: string;
  /** Where it is, as in `ScenePoint`. */
  across?: number;
  up?: number;
  /** Where its bow points, degrees true. */
  heading?: number;
  movement?: SceneMovement;
}

/** What has a length: a shore, a dock, the edge of a shoal, the way that a craft took. */
export interface SceneLine {
  id: string;
  kind?: SceneLineKind;
  /** Whose track it is: id of a craft of the section on craft. */
  craft?: string;
  label?: string;
  points?: ScenePoint[];
}

/**
 * The water seen from above at one moment, as somebody draws it: data, so that every drawing and every text of it says
 * the same. Places are kept by the sheet and not in metres, so that a width learned later moves nothing.
 */
export interface SceneSection {
  /** The moment that it shows (RFC 3339). */
  shows?: Known<string>;
  drawnBy?: string;
  /** What it was drawn from: who saw or told it. */
  drawnFrom?: Known<string>;
  /** Width of the sheet in metres; not to scale while nobody has said it. */
  metresAcross?: Known<number>;
  /** What lies at the top of the sheet, degrees true; north where it is absent. */
  topBearing?: number;
  /** Where the wind comes from, degrees true. */
  windFrom?: Known<number>;
  /** Where the current goes to, degrees true. */
  currentToward?: Known<number>;
  marks?: SceneMark[];
  lines?: SceneLine[];
  remarks?: Known<string>;
}
