import { valueOf } from '../call/known.js';
import { readInstant } from '../time/read-instant.js';
import { definedMembers } from './defined-members.js';
import type { Person } from './incident-facts.js';
import type { PersonRecord } from './people-section.js';

/**
 * A person as the determination reads them. What nobody has said is left out, and so is what cannot be: a hour of
 * death before the occurrence, or of somebody who is not known to have died, is a slip, and the hour is then unknown.
 * @param foundEmpty their craft was found with nobody aboard
 * @example personToFacts({ id: 'p1' }, new Set(), '2026-06-13T16:20:00Z') // { id: 'p1', outcome: 'unknown' }
 */
export function personToFacts(
  person: PersonRecord,
  craftIds: ReadonlySet<string>,
  occurredAt: string,
  foundEmpty = false,
): Person {
  const { craft } = person;
  const outcome = valueOf(person.outcome) ?? 'unknown';
  const diedAt = valueOf(person.diedAt);
  const canBe = diedAt !== undefined && readInstant(diedAt) >= readInstant(occurredAt);
  return definedMembers<Person>({
    id: person.id,
    role: valueOf(person.role),
    vessel: craft !== undefined && craftIds.has(craft) ? craft : undefined,
    employee: valueOf(person.employee),
    outcome,
    care: valueOf(person.care),
    treatments: valueOf(person.treatments),
    inpatient: valueOf(person.inpatient),
    lostConsciousness: valueOf(person.lostConsciousness),
    carriedFromScene: valueOf(person.carriedFromScene),
    incapacitatedHours: valueOf(person.incapacitatedHours),
    diedAt: outcome === 'died' && canBe ? diedAt : undefined,
    missingSince: valueOf(person.missingSince) ?? valueOf(person.death?.lastSeenAt),
    signsOfHarm: signsOfHarm(person, outcome === 'not-back' && foundEmpty),
    amputation: valueOf(person.amputation),
    eyeLoss: valueOf(person.eyeLoss),
    admittedAt: valueOf(person.admittedAt),
    lostAt: valueOf(person.lostAt),
    harmLearnedAt: valueOf(person.harmLearnedAt),
  });
}

/** A craft without those who went out on it is a circumstance that indicates death or injury (33 CFR 173.53(a)). */
function signsOfHarm({ signsOfHarm: said }: PersonRecord, foundWithout: boolean): Person['signsOfHarm'] {
  return foundWithout && valueOf(said) !== 'no' ? 'yes' : valueOf(said);
}
