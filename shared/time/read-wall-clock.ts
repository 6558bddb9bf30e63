import { Temporal } from 'temporal-polyfill';

/**
 * The instant at which the clocks of a zone show a time, as RFC 3339 with the offset in force; null where it is no
 * time. A time that comes twice when clocks are set back is the earlier one, and so is one that does not come.
 * @param wallClock as a field of the browser gives it
 * @param zone IANA name or fixed offset
 * @example readWallClock('2026-06-13T11:20', 'America/Chicago') // '2026-06-13T11:20:00-05:00'
 */
export function readWallClock(wallClock: string, zone: string): string | null {
  try {
    return Temporal.PlainDateTime.from(wallClock)
      .toZonedDateTime(zone, { disambiguation: 'earlier' })
      .toString({ timeZoneName: 'never', fractionalSecondDigits: 0 });
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
