import { Temporal } from 'temporal-polyfill';

const STRICT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:[0-5]\d(\.\d{1,3})?(Z|[+-]\d\d:\d\d)$/;

/**
 * Milliseconds since the Unix epoch of an RFC 3339 date-time with an offset, already checked by the
 * reader of the facts. `readInstant('2026-06-13T11:20:00-05:00')` is `1781367600000`.
 */
export function readInstant(dateTime: string): number {
  // Only this form is one that every engine's Date.parse reads alike; Temporal reads the rest, and :60 as :59.
  return STRICT.test(dateTime)
    ? Date.parse(dateTime)
    : Temporal.Instant.from(dateTime.toUpperCase()).epochMilliseconds;
}
