import type { Truth } from '../kernel/truth.js';
import { nameWindow } from './name-law-terms.js';
import { NOTHING_SPECIAL, type OpenPoint, type TestResult } from './finding.js';
import type { Occurrence } from './read-occurrence.js';
import { readPerson, type PersonReading } from './read-person.js';
import type { PersonFinding } from './person-finding.js';
import type { PersonTest, Trigger } from './rule-pack.js';
import { testEmployee } from './test-employee.js';
import { testFitness } from './test-fitness.js';
import { testPerson } from './test-person.js';

const WORDS: Record<PersonTest, string> = {
  death: 'Death',
  disappearance: 'Disappearance',
  'any-injury': 'Injury of any kind',
  'needs-first-aid': 'Injury needing first aid or more',
  'needs-beyond-first-aid': 'Injury needing treatment beyond first aid',
  'receives-beyond-first-aid': 'Injury treated beyond first aid',
  'medical-attention': 'Injury needing medical attention',
  'serious-injury': 'Serious injury',
  'loss-of-consciousness': 'Loss of consciousness',
  'carried-from-scene': 'Someone carried from the scene',
  incapacity: 'Incapacity',
  'incapacity-past-the-day': 'Incapacity past the day',
  'employee-death': 'Death of an employee',
  'employee-admission': 'In-patient admission of an employee',
  'employee-amputation': 'Loss of a limb, or part of one, of an employee',
  'employee-eye-loss': 'Loss of an eye of an employee',
  'injury-or-unfit':
    'Injury needing treatment beyond first aid, for who works aboard with unfitness for duty',
};

/** The people listed, and what stands between the list and "everyone": read once for all tests. */
export interface PeopleReading {
  readonly people: readonly PersonReading[];
  /** False while somebody else may be concerned: then no test of people can be false. */
  readonly everyone: boolean;
  /** What would close the list. */
  readonly gaps: readonly OpenPoint[];
}

/** Reads everyone listed, and what keeps the list from being the whole truth. */
export function readPeople(occurrence: Occurrence): PeopleReading {
  const { facts } = occurrence;
  const accounted = facts.everyoneAccountedFor ?? 'unknown';
  const short = facts.vessels.filter(
    (vessel) =>
      vessel.aboard !== undefined &&
      facts.people.filter((person) => person.vessel === vessel.id).length < vessel.aboard,
  );
  const gaps: OpenPoint[] = [];
  if (accounted === 'unknown') {
    gaps.push({
      fact: '/everyoneAccountedFor',
      text: 'Is everyone accounted for?',
      proves: false,
      denies: false,
    });
  }
  if (accounted === 'no' && facts.people.every((person) => person.outcome !== 'missing')) {
    gaps.push({ fact: '/people', text: 'Who is not accounted for?', proves: true, denies: false });
  } else if (short.length > 0) {
    const text = `Who else was aboard ${short.map((vessel) => vessel.id).join(', ')}, and what became of them?`;
    gaps.push({ fact: '/people', text, proves: true, denies: false });
  }
  if (facts.peopleAssessment !== 'complete') {
    const text = 'Are all the people concerned listed, with what became of them?';
    gaps.push({ fact: '/peopleAssessment', text, proves: true, denies: false });
  }
  return {
    people: facts.people.map((person, index) => readPerson(person, index, occurrence)),
    everyone: accounted !== 'no' && gaps.length === 0,
    gaps,
  };
}

/** A person test over everyone concerned: true of any one makes it true, a gap in the list keeps it from being false. */
export function testPeople(trigger: Trigger, reading: PeopleReading, occurrence: Occurrence): TestResult {
  const findings = reading.people.map((person) => ({
    person,
    finding: testOne(trigger, person, occurrence),
  }));
  const holding = findings.filter(({ finding }) => finding.value === 'true');
  const unknown = findings.filter(({ finding }) => finding.value === 'unknown');
  const value: Truth =
    holding.length > 0 ? 'true' : unknown.length > 0 || !reading.everyone ? 'unknown' : 'false';
  return {
    value,
    text: sentence(
      trigger,
      value,
      holding.map(({ person }) => person.name),
    ),
    holding: holding.map(({ person }) => person.clock),
    open: [
      ...unknown.flatMap(({ person, finding }) =>
        finding.open.map((point) => ({
          // What rules out one person rules out the test only when nobody else is open.
          point: { ...point, denies: point.denies && unknown.length === 1 && reading.everyone },
          clock: person.clock,
        })),
      ),
      ...reading.gaps.map((point) => ({ point, clock: NOTHING_SPECIAL })),
    ],
  };
}

function testOne(trigger: Trigger, person: PersonReading, occurrence: Occurrence): PersonFinding {
  switch (trigger.test) {
    case 'employee-death':
    case 'employee-admission':
    case 'employee-amputation':
    case 'employee-eye-loss':
      return testEmployee(trigger, person, occurrence);
    case 'injury-or-unfit':
      return testFitness(trigger, person, occurrence);
    default:
      return testPerson(trigger, person, occurrence);
  }
}

function sentence(trigger: Trigger, value: Truth, names: readonly string[]): string {
  const words = `${WORDS[trigger.test as PersonTest]}${hours(trigger)}`;
  if (value === 'true') return `${words}: ${names.join(', ')}.`;
  return value === 'false' ? `${words}: none.` : `${words}: not known yet.`;
}

function hours(trigger: Trigger): string {
  if (trigger.withinHours !== undefined) return ` ${nameWindow(trigger.withinHours)}`;
  if (trigger.hours === undefined) return '';
  if (trigger.hours === 0) return ' of any length';
  return trigger.comparison === 'at-least'
    ? ` of at least ${trigger.hours} hours`
    : ` over ${trigger.hours} hours`;
}
