import { truthOf } from '../kernel/truth.js';
import { diedWithin } from './evaluate-limits.js';
import { both, FALSE, personPoint, TRUE, unknownFinding, type PersonFinding } from './person-finding.js';
import type { Occurrence } from './read-occurrence.js';
import type { PersonReading } from './read-person.js';
import type { EmployeeTest, Trigger } from './rule-pack.js';

/**
 * Harm to an employee of the business, within the hours of the occurrence that the law names. A death or an admission
 * at an unknown hour may have been outside them; a limb or an eye is taken as lost in the occurrence unless a later
 * time is given.
 */
export function testEmployee(
  trigger: Trigger,
  reading: PersonReading,
  occurrence: Occurrence,
): PersonFinding {
  return both(isEmployee(reading), harm(trigger.test as EmployeeTest, trigger, reading, occurrence));
}

/** Whether the person was at work for the business. */
export function isEmployee(reading: PersonReading): PersonFinding {
  const value = truthOf(reading.person.employee);
  if (value !== 'unknown') return { value, open: [] };
  const text = `Was ${reading.name} an employee of the business, at work?`;
  return unknownFinding([personPoint(reading, 'employee', text, true, true)]);
}

function harm(
  test: EmployeeTest,
  trigger: Trigger,
  reading: PersonReading,
  occurrence: Occurrence,
): PersonFinding {
  const { outcome } = reading;
  if (outcome === 'unhurt') return FALSE;
  if (outcome !== 'injured' && outcome !== 'died') {
    return unknownFinding([personPoint(reading, 'outcome', `What became of ${reading.name}?`, false, true)]);
  }
  const { person, clock } = reading;
  const within = (at: number | undefined): boolean =>
    at === undefined ||
    diedWithin(
      occurrence.ends.map((end) => (at - end) / 3_600_000),
      trigger.withinHours ?? Infinity,
    );
  switch (test) {
    case 'employee-death':
      if (outcome !== 'died') return FALSE;
      return clock.diedAt === undefined
        ? unknownFinding([personPoint(reading, 'diedAt', `When did ${reading.name} die?`, true, true)])
        : truthIf(within(clock.diedAt));
    case 'employee-admission':
      if (truthOf(person.inpatient) === 'true' && clock.admittedAt === undefined) {
        const text = `When was ${reading.name} admitted to hospital?`;
        return unknownFinding([personPoint(reading, 'admittedAt', text, true, true)]);
      }
      return happened(reading, 'inpatient', 'admitted to hospital for care or treatment', {
        within: within(clock.admittedAt),
        proves: clock.admittedAt !== undefined,
      });
    case 'employee-amputation':
      return happened(reading, 'amputation', 'left without a limb or a part of one', {
        within: within(clock.lostAt),
        proves: true,
      });
    case 'employee-eye-loss':
      return happened(reading, 'eyeLoss', 'left without an eye', {
        within: within(clock.lostAt),
        proves: true,
      });
  }
}

/** Care that was not needed, or first aid alone, leaves no room for such a harm of which nobody says a word; "not known" is one. */
function happened(
  reading: PersonReading,
  member: 'inpatient' | 'amputation' | 'eyeLoss',
  words: string,
  { within, proves }: { within: boolean; proves: boolean },
): PersonFinding {
  const said = reading.person[member];
  const value = truthOf(said);
  if (value === 'false' || !within) return FALSE;
  if (value === 'true') return TRUE;
  if (said === undefined && (reading.care === 'none' || reading.care === 'first-aid')) return FALSE;
  return unknownFinding([personPoint(reading, member, `Was ${reading.name} ${words}?`, proves, true)]);
}

function truthIf(holds: boolean): PersonFinding {
  return holds ? TRUE : FALSE;
}
