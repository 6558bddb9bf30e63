const FULL_CIRCLE = 360;

/**
 * Which of the sixteen points of the compass a direction is nearest to, clockwise from north as 0.
 * @param degrees true, any turn: -45 and 315 are the same
 * @example compassPoint(225) // 10, which is SW
 */
export function compassPoint(degrees: number): number {
  return Math.round(normalBearing(degrees) / (FULL_CIRCLE / 16)) % 16;
}

/** `normalBearing(-45)` is 315, `normalBearing(360)` is 0. */
export function normalBearing(degrees: number): number {
  return ((degrees % FULL_CIRCLE) + FULL_CIRCLE) % FULL_CIRCLE;
}
