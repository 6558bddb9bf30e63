/**
 * Pictures that a craft wants taken before anything is moved, cleaned or repaired: what identifies it, what it warned of,
 * how its controls were found, and the damage (common practice, no source).
 */
export const SHOTS = [
  'bow',
  'starboard',
  'stern',
  'port',
  'hull-number',
  'registration-number',
  'capacity-plate',
  'warning-labels',
  'controls',
  'lanyard',
  'hour-meter',
  'damage',
  'damage-with-scale',
  'other-craft',
] as const;

export type Shot = (typeof SHOTS)[number];

/** A picture that could not be taken, and why. A later picture of it counts for more. */
export interface MissedShot {
  id: string;
  shot?: Shot;
  reason?: string;
}

/** Types of vessel that have no engine, and so no lanyard and no meter of its hours. */
const WITHOUT_ENGINE: ReadonlySet<string> = new Set(['paddlecraft', 'rowboat', 'sail-only']);
const OF_ENGINE: ReadonlySet<Shot> = new Set(['controls', 'lanyard', 'hour-meter']);
/** Of a craft that is not ours only what can be seen from the outside. */
const OF_OTHERS: readonly Shot[] = [
  'bow',
  'starboard',
  'stern',
  'port',
  'registration-number',
  'damage',
  'damage-with-scale',
];

/**
 * The pictures to take of a craft, in the order of a walk around it. A type that is not known is taken to have an engine.
 * @example shotsOf('paddlecraft', true).includes('lanyard') // false
 */
export function shotsOf(type: string | null, isOurs: boolean): readonly Shot[] {
  if (!isOurs) return OF_OTHERS;
  const whole = SHOTS.filter((shot) => shot !== 'other-craft');
  return type !== null && WITHOUT_ENGINE.has(type) ? whole.filter((shot) => !OF_ENGINE.has(shot)) : whole;
}

/** How far one picture of the list has come. */
export interface ShotState {
  readonly shot: Shot;
  readonly state: 'done' | 'cannot' | 'open';
  /** Ids of the files that show it; empty where it is not done. */
  readonly files: readonly string[];
  /** Why it could not be taken. */
  readonly reason: string | null;
}

/**
 * Each picture of a list with how far it has come: done where a file says that it shows it, else not to be had where
 * somebody said why, the latest word counting.
 */
export function shotStates(
  shots: readonly Shot[],
  files: readonly { readonly id: string; readonly shot: Shot | undefined }[],
  missed: readonly MissedShot[],
): ShotState[] {
  return shots.map((shot) => {
    const shown = files.filter((file) => file.shot === shot).map(({ id }) => id);
    const said = missed.findLast((one) => one.shot === shot);
    const state = shown.length > 0 ? 'done' : said === undefined ? 'open' : 'cannot';
    return { shot, state, files: shown, reason: said?.reason ?? null };
  });
}
