import type { Truth } from '../kernel/truth.js';
import type { Care, Person } from '../record/incident-facts.js';
import { readInstant } from '../time/read-instant.js';
import { isBeyondFirstAid } from '../vocabulary/treatments.js';
import { diedWithin } from './evaluate-limits.js';
import type { ClockFacts } from './finding.js';
import type { Occurrence } from './read-occurrence.js';

/** One listed person with what the tests of a law ask about, read once. */
export interface PersonReading {
  readonly person: Person;
  readonly index: number;
  readonly outcome: Person['outcome'];
  readonly care: Care;
  /** Died more than 24 hours after the occurrence; unknown while the hour is. Only for who died. */
  readonly lateDeath: Truth;
  readonly clock: ClockFacts;
  /** How the texts name this person: `the operator (p1)`. */
  readonly name: string;
}

/** Reads a person: hours to death from each end of the span, care with treatments taken into account. */
export function readPerson(person: Person, index: number, occurrence: Occurrence): PersonReading {
  const outcome = contradictsUnhurt(person) ? 'injured' : person.outcome;
  const diedAt = outcome === 'died' && person.diedAt ? readInstant(person.diedAt) : undefined;
  const hoursToDeath =
    diedAt === undefined ? undefined : occurrence.ends.map((end) => (diedAt - end) / 3_600_000);
  return {
    person,
    index,
    outcome,
    care: readCare(person),
    lateDeath: hoursToDeath === undefined ? 'unknown' : diedWithin(hoursToDeath, 24) ? 'false' : 'true',
    clock: {
      ...(diedAt !== undefined && { diedAt }),
      ...(hoursToDeath !== undefined && { hoursToDeath }),
      ...(person.missingSince !== undefined && { lastSeenAt: readInstant(person.missingSince) }),
      ...(typeof person.incapacitatedHours === 'number' && { incapacitatedHours: person.incapacitatedHours }),
      ...(person.admittedAt !== undefined && { admittedAt: readInstant(person.admittedAt) }),
      ...(person.lostAt !== undefined && { lostAt: readInstant(person.lostAt) }),
      ...(person.harmLearnedAt !== undefined && { knownAt: readInstant(person.harmLearnedAt) }),
    },
    name: person.role && person.role !== 'unknown' ? `${ROLE_WORDS[person.role]} (${person.id})` : person.id,
  };
}

const ROLE_WORDS = {
  operator: 'the operator',
  passenger: 'the passenger',
  towed: 'the towed person',
  'in-water': 'the person in the water',
  ashore: 'the person ashore',
} as const;

/**
 * The care needed. A treatment off the closed list of 29 CFR 1904.7(b)(5)(ii) is beyond first aid even
 * against a stated "first aid"; listed treatments alone prove nothing.
 */
function readCare(person: Person): Care {
  return person.treatments?.some(isBeyondFirstAid) ? 'beyond-first-aid' : (person.care ?? 'unknown');
}

/** "Unhurt" beside a stated harm is a contradiction; the harm prevails, so that no duty is lost to a slip. */
function contradictsUnhurt(person: Person): boolean {
  if (person.outcome !== 'unhurt') return false;
  return (
    ['first-aid', 'beyond-first-aid'].includes(readCare(person)) ||
    [
      person.inpatient,
      person.lostConsciousness,
      person.carriedFromScene,
      person.amputation,
      person.eyeLoss,
    ].includes('yes') ||
    (typeof person.incapacitatedHours === 'number' && person.incapacitatedHours > 0)
  );
}
