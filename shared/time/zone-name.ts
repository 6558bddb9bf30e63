import { readInstant } from './read-instant.js';

/**
 * A zone as clocks and papers in the United States call it, which says whether summer time held.
 * @example zoneName('2026-06-13T16:20:00Z', 'America/Chicago') // 'CDT'
 */
export function zoneName(instant: string, timeZone: string): string {
  // A fixed offset has no name, and older engines do not take one for a zone.
  if (/^[+-]/.test(timeZone)) return `UTC${timeZone}`;
  const parts = new Intl.DateTimeFormat('en-US', { timeZone, timeZoneName: 'short' }).formatToParts(
    readInstant(instant),
  );
  return parts.find(({ type }) => type === 'timeZoneName')?.value ?? timeZone;
}
