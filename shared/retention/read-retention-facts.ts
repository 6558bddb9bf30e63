import { valueOf } from '../call/known.js';
import { allOf, anyOf, not, type Truth, truthOf } from '../kernel/truth.js';
import type { IncidentRecord } from '../record/incident-record.js';
import type { PeopleSection } from '../record/people-section.js';
import { whenItHappened } from '../record/when-it-happened.js';
import { readInstant } from '../time/read-instant.js';
import { zoneClock } from '../time/zone-clock.js';
import { laterDay } from './end-of-period.js';
import { majorityStart } from './majority-start.js';
import { onDay, type RetentionFacts, type StartDay } from './retention-facts.js';
import type { RetentionForm } from './retention-form.js';

/** What is known of an incident beside its record. */
export interface IncidentDates {
  /** RFC 3339: when somebody last said that it is open or closed. */
  readonly statusSince: string;
  /** RFC 3339; null where no packet was made. */
  readonly lastPacketAt: string | null;
  /** RFC 3339; null where there is no draft. */
  readonly lastDraftAt: string | null;
  /** IANA zone of the business. */
  readonly timeZone: string;
}

type Facts = Pick<RetentionFacts, 'starts' | 'employeeHurt' | 'states'>;

/**
 * What a record says of how long it has to be kept. Where it happened at an unknown time, the latest counts.
 * @example readRetentionFacts(openIncident, dates, majority).starts.closing
 * // { known: 'not-begun', missing: ['It is still open: it counts from the day on which it is closed.'] }
 */
export function readRetentionFacts(
  record: IncidentRecord,
  dates: IncidentDates,
  majority: RetentionForm['majority'],
): Facts {
  const { incident, sections } = record;
  const zone = sections['time-and-place']?.timeZone?.value ?? incident.timeZone;
  const dayOf = (instant: string, at = dates.timeZone) => zoneClock(at).localDate(readInstant(instant));
  const when = whenItHappened(record);
  const occurred = {
    earliest: dayOf(when.occurredAt, zone),
    // A call alone says that it had happened by then; two clocks may disagree on the day.
    latest: laterDay(dayOf(when.occurredUntil ?? when.occurredAt, zone), dayOf(when.occurredAt)),
  };
  const states = valueOf(sections['time-and-place']?.states) ?? null;
  const people = sections.people ?? {};
  const occurrence: StartDay = { known: true, ...occurred, missing: missingTime(occurred) };
  const yearEnd = (day: string) => `${day.slice(0, 4)}-12-31`;
  return {
    states,
    employeeHurt: employeeHurt(people),
    starts: {
      occurrence,
      majority: majorityStart(
        { people: people.people ?? [], unlisted: unlistedMinor(people), occurred, states },
        majority,
      ),
      'year-end': {
        ...occurrence,
        earliest: yearEnd(occurred.earliest),
        latest: yearEnd(occurred.latest),
      },
      closing: incident.status === 'closed' ? onDay(dayOf(dates.statusSince)) : STILL_OPEN,
      'employment-end': { known: false, earliest: occurred.earliest, missing: [EMPLOYMENT] },
      ...(dates.lastPacketAt !== null && { 'packet-made': onDay(dayOf(dates.lastPacketAt)) }),
      ...(dates.lastDraftAt !== null && { saved: onDay(dayOf(dates.lastDraftAt)) }),
    },
  };
}

const STILL_OPEN: StartDay = {
  known: 'not-begun',
  missing: ['It is still open: it counts from the day on which it is closed.'],
};

const EMPLOYMENT =
  'When the employee who was hurt left the business: this desk does not record it, so such papers are never due here.';

function missingTime({ earliest, latest }: { earliest: string; latest: string }): string[] {
  return earliest === latest ? [] : ['The day on which it happened, which is known as a span.'];
}

/** An employee who surely was not hurt does not count; whoever is not listed may have been one. */
function employeeHurt({ people = [], assessment }: PeopleSection): Truth {
  const each = people.map(({ employee, outcome }) => {
    const harmed: Truth =
      outcome?.value === undefined || outcome.value === 'unknown'
        ? 'unknown'
        : outcome.value === 'unhurt'
          ? 'false'
          : 'true';
    return allOf([truthOf(valueOf(employee)), harmed]);
  });
  return anyOf([...each, isComplete(assessment?.value) ? 'false' : 'unknown']);
}

/** Children of whoever died may have a claim, and nobody lists them. */
function unlistedMinor({ people = [], assessment }: PeopleSection): Truth {
  const lives = people.map(({ outcome }): Truth => {
    if (outcome?.value === undefined) return 'unknown';
    return outcome.value === 'unhurt' || outcome.value === 'injured' ? 'true' : 'unknown';
  });
  const nobodyElse = allOf([...lives, isComplete(assessment?.value) ? 'true' : 'unknown']);
  return not(nobodyElse);
}

function isComplete(assessment: string | undefined): boolean {
  return assessment === 'complete';
}
