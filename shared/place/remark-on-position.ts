import type { PositionRemark } from './position-reading.js';

/** South, north, west and east of the states, each territory and the far Aleutians, with their waters. */
const AMERICAN_BOXES = [
  [17, 72, -180, -64],
  [51, 54, 171, 180],
  [12, 21.5, 143, 147],
  [-16, -10, -174, -167],
] as const;

/**
 * What a person should look at: a position outside the United States, and the slip that would explain it
 * (a lost minus sign or W, or the two numbers swapped).
 * @example remarkOnPosition(33.818, 96.571)[0]?.code // 'perhaps-west'
 */
export function remarkOnPosition(latitude: number, longitude: number): PositionRemark[] {
  if (isAmerican(latitude, longitude)) return [];
  if (isAmerican(latitude, -longitude)) {
    const detail = 'This longitude is east. In the United States longitude is west: add W or a minus sign.';
    return [{ code: 'perhaps-west', detail }];
  }
  if (isAmerican(longitude, latitude)) {
    const detail = 'The two numbers look swapped: latitude comes first unless letters say otherwise.';
    return [{ code: 'perhaps-swapped', detail }];
  }
  return [{ code: 'outside-united-states', detail: 'This position is outside the United States: check it.' }];
}

function isAmerican(latitude: number, longitude: number): boolean {
  return AMERICAN_BOXES.some(
    ([south, north, west, east]) =>
      south <= latitude && latitude <= north && west <= longitude && longitude <= east,
  );
}
