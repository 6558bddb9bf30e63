/**
 * The same meridian between 180 west and 180 east, for what is at most a turn outside: so 179.9 east and
 * 179.9 west are 0.2 degrees apart.
 * @example wrapLongitude(179.9 - -179.9) // -0.2
 */
export function wrapLongitude(degrees: number): number {
  if (degrees > 180) return degrees - 360;
  return degrees < -180 ? degrees + 360 : degrees;
}
