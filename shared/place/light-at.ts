import { Body, Equator, Horizon, Observer, SearchAltitude } from 'astronomy-engine';

export type Light = 'day' | 'civil twilight' | 'night';

export interface LightAt {
  light: Light;
  /** Within two minutes of sunrise or sunset: as near as the sun's tables, the place and a clock allow. */
  borderline: boolean;
  /** Of the local day around the instant, milliseconds since 1970; null where there is none that day. */
  civilDawn: number | null;
  sunrise: number | null;
  sunset: number | null;
  civilDusk: number | null;
}

/**
 * Altitudes of the sun's centre, in degrees and without refraction, at official sunrise and sunset (zenith
 * 90 degrees 50 minutes: 34 of refraction and 16 for the sun's upper edge) and at the ends of civil
 * twilight (zenith 96 degrees), as the U.S. Naval Observatory defines them.
 */
const SUNRISE_ALTITUDE = -50 / 60;
const CIVIL_ALTITUDE = -6;

const MINUTE_MS = 60_000;
const DAY_MS = 24 * 60 * MINUTE_MS;
const BORDERLINE_MS = 2 * MINUTE_MS;

/**
 * Light at a place and time, at sea level with a free horizon. `latitude` and `longitude` in degrees,
 * `instantMs` in milliseconds since 1970; `utcOffsetMinutes` says which local day is meant and defaults to
 * the mean sun's time at the longitude. Near the poles, where the sun may set twice in a day, the times are
 * the first of each kind.
 * @example lightAt(33.818, -96.571, Date.parse('2026-06-13T20:45:00-05:00'), -300).light // 'civil twilight'
 */
export function lightAt(
  latitude: number,
  longitude: number,
  instantMs: number,
  utcOffsetMinutes = longitude * 4,
): LightAt {
  const observer = new Observer(latitude, longitude, 0);
  const altitude = sunAltitude(observer, instantMs);
  const up = altitude >= SUNRISE_ALTITUDE;
  const offsetMs = utcOffsetMinutes * MINUTE_MS;
  const midnight = Math.floor((instantMs + offsetMs) / DAY_MS) * DAY_MS - offsetMs;
  const firstAt = (degrees: number, direction: 1 | -1): number | null =>
    SearchAltitude(Body.Sun, observer, direction, new Date(midnight), 1, degrees)?.date.getTime() ?? null;
  return {
    light: up ? 'day' : altitude >= CIVIL_ALTITUDE ? 'civil twilight' : 'night',
    borderline: [-BORDERLINE_MS, BORDERLINE_MS].some(
      (ms) => sunAltitude(observer, instantMs + ms) >= SUNRISE_ALTITUDE !== up,
    ),
    civilDawn: firstAt(CIVIL_ALTITUDE, +1),
    sunrise: firstAt(SUNRISE_ALTITUDE, +1),
    sunset: firstAt(SUNRISE_ALTITUDE, -1),
    civilDusk: firstAt(CIVIL_ALTITUDE, -1),
  };
}

function sunAltitude(observer: Observer, instantMs: number): number {
  const instant = new Date(instantMs);
  const { ra, dec } = Equator(Body.Sun, instant, observer, true, true);
  return Horizon(instant, observer, ra, dec).altitude;
}
