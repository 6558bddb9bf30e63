import { jsonPointer } from '../kernel/json-pointer.js';
import { anyOf, type Truth } from '../kernel/truth.js';
import type { Vessel } from '../record/incident-facts.js';
import { readInstant } from '../time/read-instant.js';
import { NOTHING_SPECIAL, type ClockFacts, type OpenPoint, type TestResult } from './finding.js';
import type { Occurrence } from './read-occurrence.js';
import type { RentalTest, Trigger } from './rule-pack.js';

/** `isRentalTest('overdue')` is true. */
export function isRentalTest(test: string): test is RentalTest {
  return test === 'rental-in-waters' || test === 'overdue';
}

/** What was agreed with the renters of our craft, and what came of it. */
export function testRental(trigger: Trigger, { facts }: Occurrence): TestResult {
  const rented = facts.vessels.flatMap((vessel, index) =>
    vessel.ours === true && vessel.use === 'rental' ? [{ vessel, index }] : [],
  );
  if (trigger.test === 'rental-in-waters') {
    const value: Truth = rented.length > 0 ? 'true' : 'false';
    return {
      value,
      text: `A craft that the business rents out: ${value === 'true' ? 'yes' : 'no'}.`,
      holding: value === 'true' ? [NOTHING_SPECIAL] : [],
      open: [],
    };
  }
  const readings = rented.map(({ vessel, index }) => lateness(vessel, index, trigger.hours ?? 0));
  const value = anyOf(readings.map((reading) => reading.value));
  const undecided = readings.filter((reading) => reading.value === 'unknown').length;
  return {
    value,
    text: `Back more than ${trigger.hours ?? 0} hours after the agreed time: ${{ true: 'yes', false: 'no', unknown: 'not known yet' }[value]}.`,
    holding: readings.flatMap((reading) => (reading.value === 'true' ? [reading.clock] : [])),
    open: readings.flatMap(({ open, clock }) =>
      open.map((point) => ({ point: { ...point, denies: point.denies && undecided === 1 }, clock })),
    ),
  };
}

interface Lateness {
  readonly value: Truth;
  readonly clock: ClockFacts;
  readonly open: readonly OpenPoint[];
}

/** A craft that is still out may be back in time: nobody can say before it is back. */
function lateness({ id, rental = {} }: Vessel, index: number, hours: number): Lateness {
  const dueBackAt = rental.dueBackAt === undefined ? undefined : readInstant(rental.dueBackAt);
  const returnedAt = rental.returnedAt === undefined ? undefined : readInstant(rental.returnedAt);
  const clock = dueBackAt === undefined ? NOTHING_SPECIAL : { dueBackAt };
  const ask = (member: string, text: string, settles: boolean): OpenPoint => ({
    fact: jsonPointer(['vessels', index, 'rental', member]),
    text,
    proves: settles,
    denies: settles,
  });
  const open = [
    ...(dueBackAt === undefined
      ? [ask('dueBackAt', `When was ${id} agreed to be back?`, returnedAt !== undefined)]
      : []),
    ...(returnedAt === undefined
      ? [ask('returnedAt', `When did ${id} come back?`, dueBackAt !== undefined)]
      : []),
  ];
  if (dueBackAt === undefined || returnedAt === undefined) return { value: 'unknown', clock, open };
  return { value: returnedAt - dueBackAt > hours * 3_600_000 ? 'true' : 'false', clock, open };
}
