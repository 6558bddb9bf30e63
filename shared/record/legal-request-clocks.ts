import { readInstant } from '../time/read-instant.js';
import { zoneClock } from '../time/zone-clock.js';
import { type LegalRequest, type RequestDetails, standing } from './legal-request.js';

type Due = Pick<RequestDetails, 'due' | 'dueAt' | 'dueDay' | 'timeZone'>;

/** Fed. R. Civ. P. 45(d)(2)(B). */
const OBJECTION_DAYS = 14;
const MINUTE_MS = 60_000;

/**
 * When a request is due, in milliseconds since the Unix epoch; null where nobody has stated it. A bare day counts to
 * its last minute, and an office may close earlier (Fed. R. Civ. P. 6(a)(4)(B) for papers not filed electronically).
 * @param zone IANA zone that counts where the request names none
 * @example dueOf({ due: 'day', dueDay: '2026-07-10' }, 'America/Chicago') // 2026-07-10T23:59-05:00
 */
export function dueOf({ due, dueAt, dueDay, timeZone }: Due, zone: string): number | null {
  if (due === 'at' && dueAt !== undefined) return readInstant(dueAt);
  if (due === 'day' && dueDay !== undefined) return lastMinute(dueDay, timeZone ?? zone);
  return null;
}

/**
 * By when objections to a subpoena of a federal court have to be served, in milliseconds since the Unix epoch: before
 * the earlier of the time for compliance and 14 days after service (Fed. R. Civ. P. 45(d)(2)(B)). The day of service is
 * not counted, the last is (6(a)(1)); that it moves past a weekend or holiday is left out, so that nobody is late.
 * Null for every other paper.
 * @param zone IANA zone that counts where the request names none
 */
export function objectionsBy(
  details: Due & Pick<RequestDetails, 'kind' | 'court' | 'receivedAt'>,
  zone: string,
): number | null {
  const { kind, court, receivedAt, timeZone } = details;
  if (kind !== 'subpoena' || court !== 'federal') return null;
  const clock = zoneClock(timeZone ?? zone);
  const day = clock.localDate(clock.plusCalendarDays(readInstant(receivedAt), OBJECTION_DAYS));
  const after = lastMinute(day, timeZone ?? zone);
  return Math.min(after, dueOf(details, zone) ?? after);
}

/**
 * The time that runs out first, in milliseconds since the Unix epoch: when it is due, or by when to object while nobody
 * has. Null where it is not known when it is due, since that may be before every other time.
 * @param zone IANA zone that counts where the request names none
 * @example firstClock({ details: { due: 'unknown', … }, objections: [] }, 'America/Chicago') // null
 */
export function firstClock(
  { details, objections }: Pick<LegalRequest, 'details' | 'objections'>,
  zone: string,
): number | null {
  const due = dueOf(details, zone);
  if (due === null || standing(objections).length > 0) return due;
  return Math.min(due, objectionsBy(details, zone) ?? due);
}

function lastMinute(day: string, zone: string): number {
  const clock = zoneClock(zone);
  // Noon of the day in UTC may be the day before or after it in the zone, so it is looked for from a day earlier on.
  let midnight = clock.nextMidnight(Date.parse(`${day}T00:00:00Z`) - 86_400_000);
  while (clock.localDate(midnight) <= day) midnight = clock.nextMidnight(midnight);
  return midnight - MINUTE_MS;
}
