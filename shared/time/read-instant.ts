import { Temporal } from 'temporal-polyfill';

/**
 * Milliseconds since the Unix epoch of an RFC 3339 date-time with an offset, already checked by the
 * reader of the facts. `readInstant('2026-06-13T11:20:00-05:00')` is `1781367600000`.
 */
export function readInstant(dateTime: string): number {
  const quick = Date.parse(dateTime);
  // Date.parse knows no leap second; Temporal reads :60 as :59, the cautious side of it.
  return Number.isNaN(quick) ? Temporal.Instant.from(dateTime.toUpperCase()).epochMilliseconds : quick;
}
