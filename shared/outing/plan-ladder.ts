import { type Light, lightAt } from '../place/light-at.js';
import { type Rung, RUNGS } from './not-back.js';

/** Minutes after "not back" was opened by which a rung should be climbed. Common practice, no source. */
const MINUTES: Readonly<Record<Rung, number>> = {
  'call-renter': 0,
  search: 15,
  sheriff: 30,
  'coast-guard': 30,
};
const BASIS =
  'Common practice, no source. Where anybody may be in danger: emergency services first, at once.';

export interface NightLimit {
  /** RFC 3339 in UTC: our own boat turns for home; null where the place is not known or the sun does not set. */
  readonly sunset: string | null;
  /** The end of civil twilight: our own boat is in by then. */
  readonly civilDusk: string | null;
  readonly lightNow: Light | 'unknown';
}

export interface LadderRung {
  readonly rung: Rung;
  /** RFC 3339 in UTC. */
  readonly by: string;
  /** When our own boat stops; only for `search`. */
  readonly until: string | null;
  readonly says: string;
  readonly basis: string;
}

export interface LadderFacts {
  /** Epoch milliseconds. */
  readonly openedAt: number;
  readonly now: number;
  /** Degrees, and the offset of the station's clock from UTC, which says which day is meant. */
  readonly place: { latitude: number; longitude: number; utcOffsetMinutes: number } | null;
}

/**
 * The sun's limit for our own boat, on the local day of the moment at which "not back" was opened.
 * @example findNightLimit({ openedAt, now, place: null }) // { sunset: null, civilDusk: null, lightNow: 'unknown' }
 */
export function findNightLimit({ openedAt, now, place }: LadderFacts): NightLimit {
  if (place === null) return { sunset: null, civilDusk: null, lightNow: 'unknown' };
  const { latitude, longitude, utcOffsetMinutes } = place;
  const { sunset, civilDusk } = lightAt(latitude, longitude, openedAt, utcOffsetMinutes);
  return {
    sunset: sunset === null ? null : new Date(sunset).toISOString(),
    civilDusk: civilDusk === null ? null : new Date(civilDusk).toISOString(),
    lightNow: lightAt(latitude, longitude, now, utcOffsetMinutes).light,
  };
}

/**
 * Whom to call and what to do, with the time by which. Sheriff and Coast Guard are called before the sun sets on the
 * search, and at once where it has: our own boat does not go out in the dark.
 * @example planLadder({ openedAt, now: openedAt, place: null })[0].rung // 'call-renter'
 */
export function planLadder(facts: LadderFacts): LadderRung[] {
  const limit = findNightLimit(facts);
  const { openedAt } = facts;
  const sunset = limit.sunset === null ? Infinity : Date.parse(limit.sunset);
  const openedInTheDark = isDark(facts);
  return RUNGS.map((rung) => {
    const planned = openedAt + MINUTES[rung] * 60_000;
    const by = openedInTheDark ? openedAt : Math.max(openedAt, Math.min(planned, sunset));
    const until = rung === 'search' && !openedInTheDark ? limit.sunset : null;
    return {
      rung,
      by: new Date(by).toISOString(),
      until,
      says: wordsOf(rung, openedInTheDark, until),
      basis: BASIS,
    };
  });
}

function isDark({ openedAt, place }: LadderFacts): boolean {
  if (place === null) return false;
  return lightAt(place.latitude, place.longitude, openedAt, place.utcOffsetMinutes).light !== 'day';
}

function wordsOf(rung: Rung, dark: boolean, until: string | null): string {
  switch (rung) {
    case 'call-renter':
      return 'Call the renter and everybody whose number is on the sheet; look whether the vehicle is in the lot.';
    case 'search':
      if (dark) return 'The sun is down: our own boat stays in. Sheriff and Coast Guard now.';
      return until === null
        ? 'Search with our own boat by daylight only. The place of the station is not known, so look up when the sun sets.'
        : 'Search with our own boat until the sun sets, and be in by the end of twilight.';
    case 'sheriff':
      return 'Call the sheriff: read out the search sheet, and write down their reference.';
    case 'coast-guard':
      return 'Call the Coast Guard where they answer for this water: by telephone, or VHF 16 where carried.';
  }
}
