import type { StateDistance, StatesNear } from './geography.js';
import { checkCoordinates, metresPerDegree } from './metres-per-degree.js';
import { BAND_DEGREES, NO_STATE, bandOf, type StateLines } from './state-lines.js';
import { wrapLongitude } from './wrap-longitude.js';

/**
 * The state a position lies in and the other states whose line is within `withinM` metres, nearest first.
 * Positions are degrees (WGS 84); a latitude or longitude out of range throws RangeError.
 *
 * Distances are measured on a plane that touches the ellipsoid at the position: up to 35 km they are
 * right to one part in a hundred south of 72 degrees, well within the 300 m by which the lines themselves
 * may err; the distance of a position deep inside a state is only an indication.
 * @example findStates(lines, 33.818, -96.571, 1_000)
 * // { inside: { state: 'TX', distanceM: 163 }, near: [{ state: 'OK', distanceM: 163 }] } on Lake Texoma
 */
export function findStates(
  lines: StateLines,
  latitude: number,
  longitude: number,
  withinM: number,
): StatesNear {
  checkCoordinates(latitude, longitude);
  const inside = stateAt(lines, latitude, longitude);
  const distances = measureLines(lines, latitude, longitude, withinM, inside);
  const near: StateDistance[] = [];
  lines.states.forEach((state, i) => {
    const distanceM = distances[i] ?? Infinity;
    if (i !== inside && distanceM <= withinM) near.push({ state, distanceM });
  });
  near.sort((a, b) => a.distanceM - b.distanceM);
  const state = lines.states[inside];
  return { inside: state === undefined ? null : { state, distanceM: distances[inside] ?? Infinity }, near };
}

/** Index of the state around a position, or `NO_STATE`: a ray to the east leaves it once more than it enters. */
function stateAt(lines: StateLines, latitude: number, longitude: number): number {
  const crossings = new Uint8Array(lines.states.length);
  const band = bandOf(latitude);
  const end = lines.bandStart[band + 1] ?? 0;
  for (let at = lines.bandStart[band] ?? end; at < end; at += 1) {
    const segment = lines.segments[at] ?? 0;
    const fromLatitude = lines.latitude[segment] ?? 0;
    const toLatitude = lines.latitude[segment + 1] ?? 0;
    if (fromLatitude > latitude === toLatitude > latitude) continue;
    const from = lines.longitude[segment] ?? 0;
    const to = lines.longitude[segment + 1] ?? 0;
    const share = (latitude - fromLatitude) / (toLatitude - fromLatitude);
    if (from + share * (to - from) <= longitude) continue;
    const one = lines.oneSide[segment] ?? NO_STATE;
    const other = lines.otherSide[segment] ?? NO_STATE;
    crossings[one] = (crossings[one] ?? 0) ^ 1;
    crossings[other] = (crossings[other] ?? 0) ^ 1;
  }
  const found = crossings.indexOf(1);
  return found === -1 ? NO_STATE : found;
}

/**
 * Metres to the line of each state, as far as anyone asked: bands are read outward from the position until
 * the next lies further off than `withinM` and than the line of the state the position is inside of.
 */
function measureLines(
  lines: StateLines,
  latitude: number,
  longitude: number,
  withinM: number,
  inside: number,
): Float64Array {
  const metres = metresPerDegree(latitude);
  const distances = new Float64Array(lines.states.length).fill(Infinity);
  const middle = bandOf(latitude);
  const bands = lines.bandStart.length - 1;
  const reach = (): number => Math.max(withinM, inside === NO_STATE ? 0 : (distances[inside] ?? 0));
  const furthest = Math.max(middle, bands - middle);
  for (let step = 0; step <= furthest; step += 1) {
    if ((step - 1) * BAND_DEGREES * metres.latitude > reach()) break;
    measureBand(middle - step);
    if (step > 0) measureBand(middle + step);
  }
  return distances;

  function measureBand(band: number): void {
    if (band < 0 || band >= bands) return;
    const end = lines.bandStart[band + 1] ?? 0;
    for (let at = lines.bandStart[band] ?? end; at < end; at += 1) {
      const segment = lines.segments[at] ?? 0;
      const from = lines.longitude[segment] ?? 0;
      const x = wrapLongitude(from - longitude) * metres.longitude;
      const y = ((lines.latitude[segment] ?? 0) - latitude) * metres.latitude;
      const dx = ((lines.longitude[segment + 1] ?? 0) - from) * metres.longitude;
      const dy = ((lines.latitude[segment + 1] ?? 0) - (lines.latitude[segment] ?? 0)) * metres.latitude;
      const distance = distanceFromOrigin(x, y, dx, dy);
      const one = lines.oneSide[segment] ?? NO_STATE;
      const other = lines.otherSide[segment] ?? NO_STATE;
      if (distance < (distances[one] ?? 0)) distances[one] = distance;
      if (distance < (distances[other] ?? 0)) distances[other] = distance;
    }
  }
}

/** From (0, 0) to the segment that starts at (x, y) and runs by (dx, dy). */
function distanceFromOrigin(x: number, y: number, dx: number, dy: number): number {
  const lengthSquared = dx * dx + dy * dy;
  const along = lengthSquared === 0 ? 0 : Math.min(1, Math.max(0, -(x * dx + y * dy) / lengthSquared));
  const nearX = x + along * dx;
  const nearY = y + along * dy;
  return Math.sqrt(nearX * nearX + nearY * nearY);
}
