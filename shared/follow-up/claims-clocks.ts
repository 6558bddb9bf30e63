import { Temporal } from 'temporal-polyfill';
import { valueOf } from '../call/known.js';
import { stampInstant } from '../call/stamp.js';
import type { ReadingBasis } from '../law/rule-pack.js';
import type { IncidentRecord } from '../record/incident-record.js';
import { readInstant } from '../time/read-instant.js';
import { zoneClock } from '../time/zone-clock.js';

/** A period of law about claims, from `forms/follow-up/claims-clocks.json`. */
export interface ClaimsPeriod {
  readonly id: string;
  readonly name: string;
  readonly citation: string;
  readonly basis: ReadingBasis;
  readonly readOn: string;
  readonly months: number;
  readonly from: 'first-written-claim' | 'occurrence';
  readonly what: string;
  readonly doubts: readonly string[];
}

/** A claims period as it runs in one incident. Null: it has not started. */
export interface ClaimsClock extends ClaimsPeriod {
  /** RFC 3339 with the zone's offset. */
  readonly startsAt: string | null;
  readonly endsAt: string | null;
}

/**
 * The same wall-clock time so many calendar months later; a day that the month does not have becomes its last one
 * (31 August and six months: 28 February), a time that does not exist takes the earlier instant.
 * @example plusMonths(Date.parse('2026-08-31T12:00:00-05:00'), 6, 'America/Chicago') // that of 2027-02-28T12:00:00-06:00
 */
export function plusMonths(instant: number, months: number, zone: string): number {
  const from = Temporal.Instant.fromEpochMilliseconds(instant).toZonedDateTimeISO(zone);
  return from
    .toPlainDateTime()
    .add({ months }, { overflow: 'constrain' })
    .toZonedDateTime(zone, { disambiguation: 'earlier' }).epochMilliseconds;
}

/**
 * When the first written notice of a claim was received, in epoch milliseconds; null while there is none. A writing
 * without a time counts from when it was learned, or from the opening of the incident: early rather than late.
 * @param earlier what was taken for the first before; a start is never moved to a later time
 * @example firstWrittenClaim(recordWithALetterOf3July, null) // that of 3 July
 */
export function firstWrittenClaim(record: IncidentRecord, earlier: number | null): number | null {
  const starts = (record.sections.contacts?.contacts ?? []).flatMap(({ writtenDemand, direction, at }) => {
    if (valueOf(writtenDemand) !== 'yes' || direction === 'out') return [];
    if (at !== undefined) return [stampInstant(at)];
    return [readInstant(writtenDemand?.learnedAt ?? record.incident.openedAt)];
  });
  const all = earlier === null ? starts : [...starts, earlier];
  return all.length === 0 ? null : Math.min(...all);
}

/**
 * The claims clocks of an incident. They end at the wall-clock time at which they began, which is the earlier of the
 * fair readings; weekends and holidays lengthen nothing.
 * @param occurredAt the earliest at which it can have happened, in epoch milliseconds
 * @example runClaimsClocks(periods, { occurredAt, firstClaim: null, zone: 'America/Chicago' })[0].endsAt // null
 */
export function runClaimsClocks(
  periods: readonly ClaimsPeriod[],
  {
    occurredAt,
    firstClaim,
    zone,
  }: { readonly occurredAt: number; readonly firstClaim: number | null; readonly zone: string },
): ClaimsClock[] {
  const clock = zoneClock(zone);
  return periods.map((period) => {
    const start = period.from === 'occurrence' ? occurredAt : firstClaim;
    if (start === null) return { ...period, startsAt: null, endsAt: null };
    return {
      ...period,
      startsAt: clock.format(start),
      endsAt: clock.format(plusMonths(start, period.months, zone)),
    };
  });
}
