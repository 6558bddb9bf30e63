import type { IncidentFacts, Person } from '../../shared/record/incident-facts.js';
import { findUnknowns, type Unknown } from './complete-facts.js';

const EVENTS = ['oilSheen', 'bridgeStruck', 'propulsionOrSteeringLost', 'seaworthinessImpaired'] as const;
const HOURS_TO_DEATH = [0, 30, 720, 721];
const HOURS_TO_ADMISSION = [0, 24, 25];
/** Once one of them is told, all are asked. */
const SIGNS = [
  'crewSupplied',
  'ownerMayRefuseCrew',
  'ownerAboard',
  'renterPaysFuel',
  'renterInsures',
  'surveyedBeforeAndAfter',
] as const;
/** Of the day of the occurrence: on time, four hours late and a minute more, each against some other. */
const DUE_BACK = ['07:20', '12:00', '18:00', '20:00'];
const RETURNED = ['10:00', '12:00', '16:00', '16:01', '23:59'];

/**
 * Every unknown of a document that tells of other matters than the accident: what `findUnknowns` finds, answered so that
 * the sides of these laws are reached, and what only they ask. Facts that are stated as unknown count; absent ones do not,
 * save times, which have no word for unknown.
 */
export function findOtherUnknowns(facts: IncidentFacts): Unknown[] {
  return [
    ...findUnknowns(facts).map((unknown) => ({
      ...unknown,
      answers: ANSWERS_HERE[unknown.fact]?.(facts) ?? answersOfDeath(unknown, facts) ?? unknown.answers,
    })),
    ...EVENTS.filter((event) => facts[event] === 'unknown' && !isShown(event, facts)).map((event) =>
      yesNo(`/${event}`, (one, value) => (one[event] = value)),
    ),
    ...facts.people.flatMap((person, at) => personUnknowns(person, at, facts)),
    ...facts.vessels.flatMap((_, at) => vesselUnknowns(facts, at)),
  ];
}

/** A capsizing shows that the craft was not fit to sail; a plain "no" takes that back, and is no new fact. */
function isShown(event: (typeof EVENTS)[number], { casualtyTypes }: IncidentFacts): boolean {
  return event === 'seaworthinessImpaired' && casualtyTypes.includes('capsizing');
}

const ANSWERS_HERE: Readonly<Record<string, (facts: IncidentFacts) => Unknown['answers']>> = {
  '/casualtyTypes': () =>
    [
      ['grounding'],
      ['capsizing'],
      ['collision-with-recreational-vessel'],
      ['collision-with-fixed-object'],
    ].map((types) => (one) => (one.casualtyTypes = types)),
  '/peopleAssessment': (facts) => [
    (one) => (one.peopleAssessment = 'complete'),
    ...harmed(facts).map((person) => (one: IncidentFacts) => {
      one.peopleAssessment = 'complete';
      one.people.push({ ...person, id: `assessed-${one.people.length}` });
    }),
  ],
};

function answersOfDeath({ fact }: Unknown, facts: IncidentFacts): Unknown['answers'] | undefined {
  const at = /^\/people\/(\d+)\/diedAt$/.exec(fact)?.[1];
  if (at === undefined) return undefined;
  return HOURS_TO_DEATH.map(
    (hours) => (one) => Object.assign(personOf(one, Number(at)), { diedAt: after(facts, hours) }),
  );
}

function personUnknowns(
  { employee, inpatient, admittedAt, outcome }: Person,
  at: number,
  facts: IncidentFacts,
): Unknown[] {
  const unknowns: Unknown[] = [];
  if (employee === 'unknown') {
    unknowns.push(yesNo(`/people/${at}/employee`, (one, value) => (personOf(one, at).employee = value)));
  }
  if (inpatient === 'yes' && admittedAt === undefined && outcome !== 'unhurt') {
    unknowns.push({
      fact: `/people/${at}/admittedAt`,
      answers: HOURS_TO_ADMISSION.map(
        (hours) => (one) => (personOf(one, at).admittedAt = after(facts, hours)),
      ),
    });
  }
  return unknowns;
}

function vesselUnknowns(facts: IncidentFacts, at: number): Unknown[] {
  const { passengersForHire, charter, rental } = vesselOf(facts, at);
  const unknowns: Unknown[] = [];
  if (passengersForHire === 'unknown') {
    const set = (one: IncidentFacts, value: 'yes' | 'no') => (vesselOf(one, at).passengersForHire = value);
    unknowns.push(yesNo(`/vessels/${at}/passengersForHire`, set));
  }
  for (const sign of charter === undefined ? [] : SIGNS) {
    if ((charter?.[sign] ?? 'unknown') !== 'unknown') continue;
    const set = (one: IncidentFacts, value: 'yes' | 'no') =>
      Object.assign(vesselOf(one, at), { charter: { ...vesselOf(one, at).charter, [sign]: value } });
    unknowns.push(yesNo(`/vessels/${at}/charter/${sign}`, set));
  }
  if (rental === undefined) return unknowns;
  for (const [member, times] of [
    ['dueBackAt', DUE_BACK],
    ['returnedAt', RETURNED],
  ] as const) {
    if (rental[member] !== undefined) continue;
    unknowns.push({
      fact: `/vessels/${at}/rental/${member}`,
      answers: times.map((time) => (one) => {
        const before = vesselOf(one, at);
        before.rental = { ...before.rental, [member]: `${facts.occurredAt.slice(0, 10)}T${time}:00-05:00` };
      }),
    });
  }
  return unknowns;
}

/** People of whom each of these laws is true, and some of whom none is. */
function harmed(facts: IncidentFacts): Person[] {
  const well = {
    care: 'none',
    inpatient: 'no',
    amputation: 'no',
    eyeLoss: 'no',
    incapacitatedHours: 0,
  } as const;
  const hurt = { ...well, id: '', outcome: 'injured', care: 'beyond-first-aid', employee: 'yes' } as const;
  const dead = { ...well, id: '', outcome: 'died', employee: 'yes' } as const;
  return [
    { ...dead, diedAt: after(facts, 0) },
    { ...dead, diedAt: after(facts, 721) },
    { ...dead, diedAt: after(facts, 0), employee: 'no' },
    { ...hurt, employee: 'no' },
    hurt,
    { ...hurt, incapacitatedHours: 8 },
    { ...hurt, inpatient: 'yes', admittedAt: after(facts, 0) },
    { ...hurt, amputation: 'yes' },
    { ...hurt, eyeLoss: 'yes' },
  ];
}

function yesNo(fact: string, set: (one: IncidentFacts, value: 'yes' | 'no') => unknown): Unknown {
  return { fact, answers: [(one) => void set(one, 'yes'), (one) => void set(one, 'no')] };
}

function personOf({ people }: IncidentFacts, at: number): Person {
  return people[at] ?? missing();
}

function vesselOf({ vessels }: IncidentFacts, at: number): IncidentFacts['vessels'][number] {
  return vessels[at] ?? missing();
}

function missing(): never {
  throw new Error('an answer without its place');
}

function after({ occurredAt }: IncidentFacts, hours: number): string {
  return new Date(Date.parse(occurredAt) + hours * 3_600_000).toISOString();
}
