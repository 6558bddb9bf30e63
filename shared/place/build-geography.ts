import type { Geography, StatesNear } from './geography.js';
import { findStates } from './find-states.js';
import { metresPerDegree } from './metres-per-degree.js';
import type { StateLines } from './state-lines.js';
import { wrapLongitude } from './wrap-longitude.js';
import { zonesOf } from './zones-of-states.js';

/** IANA zone of a position by a world-wide table, as the tz-lookup package gives it. */
export type LookUpZone = (latitude: number, longitude: number) => string;

/** A position in no state belongs, for its clock, to the nearest state within the territorial sea (12 nmi). */
const OFFSHORE_M = 22_224;

/**
 * Geography over prepared lines and a world-wide zone table.
 *
 * The table is coarse: near a border it may name a zone that the state has never had (American Samoa
 * comes out a day ahead, in Apia's). So the state decides where it has one zone; where it has several, the
 * table's answer counts only if it is one of them, else that of the nearest place whose zone is.
 * @example buildGeography(lines, lookUpZone).zoneAt(33.818, -96.571) // 'America/Chicago'
 */
export function buildGeography(lines: StateLines, lookUpZone: LookUpZone): Geography {
  const statesNear = (latitude: number, longitude: number, withinM: number): StatesNear =>
    findStates(lines, latitude, longitude, withinM);
  return {
    statesNear,
    zoneAt(latitude, longitude) {
      const { inside, near } = statesNear(latitude, longitude, OFFSHORE_M);
      const state = (inside ?? near[0])?.state;
      const zones = state === undefined ? [] : zonesOf(state);
      if (zones.length === 0) return lookUpZone(latitude, longitude);
      if (zones.length === 1 && zones[0] !== undefined) return zones[0];
      return nearestOf(zones, latitude, longitude, lookUpZone);
    },
  };
}

function nearestOf(
  zones: readonly string[],
  latitude: number,
  longitude: number,
  lookUp: LookUpZone,
): string {
  const metres = metresPerDegree(latitude);
  for (const distanceM of [0, 2_000, 5_000, 10_000, 20_000, 40_000]) {
    for (let eighth = 0; eighth < (distanceM === 0 ? 1 : 8); eighth += 1) {
      const north = (Math.cos((eighth * Math.PI) / 4) * distanceM) / metres.latitude;
      const east = (Math.sin((eighth * Math.PI) / 4) * distanceM) / metres.longitude;
      const zone = lookUp(latitude + north, wrapLongitude(longitude + east));
      if (zones.includes(zone)) return zone;
    }
  }
  return zones[0] ?? lookUp(latitude, longitude);
}
