import { stampInstant } from '../call/stamp.js';
import { readInstant } from '../time/read-instant.js';
import { zoneClock } from '../time/zone-clock.js';
import type { IncidentRecord } from './incident-record.js';

/** When it happened as a span, and when the business first knew; instants of RFC 3339. */
export interface When {
  readonly occurredAt: string;
  readonly occurredUntil?: string;
  readonly learnedAt: string;
  /** What `occurredAt` was taken from. */
  readonly from: 'occurred' | 'departure' | 'call';
}

const MINUTE_MS = 60_000;

/**
 * The earliest and the latest it can have happened. While nobody has said when, a craft that was out tells the span
 * from departure to return, and a bare call the moment it was taken: the later it is assumed, the later a deadline
 * would be shown, so of several moments the earliest is taken.
 * @example whenItHappened(recordOfABareCall).from // 'call'
 */
export function whenItHappened({ incident, sections }: IncidentRecord): When {
  const { taken, late } = sections.call ?? {};
  const occurred = sections['time-and-place']?.occurred?.value;
  const told = late?.toldThenAt?.value;
  const learned = Math.min(
    readInstant(incident.openedAt),
    ...(taken === undefined ? [] : [stampInstant(taken)]),
    // Nobody is told of it before it happens: such a time is a slip.
    ...(told === undefined || (occurred && readInstant(told) < readInstant(occurred.at))
      ? []
      : [readInstant(told)]),
  );
  const learnedAt = iso(learned);
  if (occurred !== undefined) {
    const { at, until, precision, withinMinutes = 0 } = occurred;
    const give = precision === 'about' ? withinMinutes * MINUTE_MS : 0;
    if (until !== undefined) return { occurredAt: at, occurredUntil: until, learnedAt, from: 'occurred' };
    if (give === 0) return { occurredAt: at, learnedAt, from: 'occurred' };
    const middle = readInstant(at);
    const [occurredAt, occurredUntil] = [iso(middle - give), iso(middle + give)];
    return { occurredAt, occurredUntil, learnedAt, from: 'occurred' };
  }
  return spanOut(sections, learned) ?? { occurredAt: learnedAt, learnedAt, from: 'call' };
}

/** From departure to return, or to when we heard of it. */
function spanOut(sections: IncidentRecord['sections'], learned: number): When | undefined {
  const { 'check-in': checkIn, rental } = sections;
  const departed = checkIn?.departedAt?.value ?? rental?.departedAt?.value;
  if (departed === undefined || readInstant(departed) > learned) return undefined;
  const back = checkIn?.returnedAt?.value ?? rental?.returnedAt?.value;
  const returned = back === undefined ? learned : Math.min(readInstant(back), learned);
  return {
    occurredAt: departed,
    occurredUntil: iso(Math.max(returned, readInstant(departed))),
    learnedAt: iso(learned),
    from: 'departure',
  };
}

function iso(instant: number): string {
  return new Date(instant).toISOString();
}

/**
 * The day of the calendar on which it happened, at the place or, while that is not known, at the business.
 * @example localDayOf(recordOf('2026-06-14T03:30:00Z', 'America/Chicago')) // '2026-06-13'
 */
export function localDayOf(record: IncidentRecord): string {
  const zone = record.sections['time-and-place']?.timeZone?.value ?? record.incident.timeZone;
  return zoneClock(zone).localDate(readInstant(whenItHappened(record).occurredAt));
}
