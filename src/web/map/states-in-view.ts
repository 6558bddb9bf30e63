import { findStates } from '../../../shared/place/find-states.js';
import { STATE_NAMES } from '../../../shared/place/state-codes.js';
import type { StateLines } from '../../../shared/place/state-lines.js';
import type { MapPlace } from './map-types.js';

export interface View {
  readonly south: number;
  readonly west: number;
  readonly north: number;
  readonly east: number;
}

/** Looked up so many times across and down. */
const STEPS = 5;
/** Wider than this a name would stand anywhere, and the outlines tell more. */
const WIDEST_DEGREES = 30;

/** The states of a view, each where most of it is seen, so that it is clear which side of a line is whose. */
export function statesInView(lines: StateLines, { south, west, north, east }: View): MapPlace[] {
  if (east - west > WIDEST_DEGREES || north > 85 || south < -85 || west < -180 || east > 180) return [];
  const seen = new Map<string, { latitude: number; longitude: number }[]>();
  for (let row = 0; row < STEPS; row += 1) {
    for (let column = 0; column < STEPS; column += 1) {
      const latitude = south + ((row + 0.5) / STEPS) * (north - south);
      const longitude = west + ((column + 0.5) / STEPS) * (east - west);
      const state = findStates(lines, latitude, longitude, 0).inside?.state;
      if (state !== undefined) seen.set(state, [...(seen.get(state) ?? []), { latitude, longitude }]);
    }
  }
  return [...seen].flatMap(([state, points]) => {
    const middle = middleOf(points);
    return middle === undefined ? [] : [{ name: STATE_NAMES[state] ?? state, ...middle }];
  });
}

/** The point nearest to the middle of them, which the average of a bent shore may not be. */
function middleOf(points: readonly { latitude: number; longitude: number }[]) {
  const mean = (of: (point: { latitude: number; longitude: number }) => number): number =>
    points.reduce((sum, point) => sum + of(point), 0) / points.length;
  const latitude = mean((point) => point.latitude);
  const longitude = mean((point) => point.longitude);
  const far = (point: { latitude: number; longitude: number }): number =>
    Math.hypot(point.latitude - latitude, point.longitude - longitude);
  return [...points].sort((one, other) => far(one) - far(other))[0];
}
