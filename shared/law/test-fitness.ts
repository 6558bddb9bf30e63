import { isEmployee } from './test-employee.js';
import { both, FALSE, personPoint, TRUE, unknownFinding, type PersonFinding } from './person-finding.js';
import type { Occurrence } from './read-occurrence.js';
import type { PersonReading } from './read-person.js';
import { testPerson } from './test-person.js';
import type { Trigger } from './rule-pack.js';

/**
 * An injury that needs more than first aid and, for a person engaged aboard a vessel in commercial service, makes them
 * unfit for their routine duties (46 CFR 4.05-1(a)(6)). An employee of ours who was not ashore counts as engaged.
 */
export function testFitness(trigger: Trigger, reading: PersonReading, occurrence: Occurrence): PersonFinding {
  const hurt = testPerson({ ...trigger, test: 'needs-beyond-first-aid' }, reading, occurrence);
  return both(hurt, counts(reading));
}

function counts(reading: PersonReading): PersonFinding {
  if (reading.outcome === 'died' || reading.person.role === 'ashore') return TRUE;
  const engaged = isEmployee(reading);
  if (engaged.value === 'false') return TRUE;
  const hours = reading.person.incapacitatedHours;
  if (typeof hours === 'number' && hours > 0) return TRUE;
  const answered = typeof hours === 'number';
  if (answered && engaged.value === 'true') return FALSE;
  const text = `For how many hours was ${reading.name} unfit for their routine work?`;
  return unknownFinding([
    ...engaged.open.map((point) => ({ ...point, denies: answered })),
    ...(answered ? [] : [personPoint(reading, 'incapacitatedHours', text, true, engaged.value === 'true')]),
  ]);
}
