import fc from 'fast-check';
import type { DamageItem, IncidentFacts, Person, Vessel } from '../../shared/record/incident-facts.js';

const ternary = fc.constantFrom('yes' as const, 'no' as const, 'unknown' as const);
/** Mostly known, so that a document stays small enough for all its completions to be listed. */
const mostly = <T>(known: fc.Arbitrary<T>, unknown: fc.Arbitrary<T>) =>
  fc.oneof({ weight: 5, arbitrary: known }, { weight: 1, arbitrary: unknown });
const mostlyYes = mostly<'yes' | 'no' | 'unknown'>(fc.constant('yes'), ternary);
const mostlyNo = mostly<'yes' | 'no' | 'unknown'>(fc.constant('no'), ternary);

/** Amounts around the limits that laws set. */
const dollars = fc.constantFrom(
  0,
  50,
  99.99,
  100,
  500,
  500.01,
  749.99,
  1000,
  1000.01,
  1999.99,
  2000,
  2000.01,
  9000,
);
const amount: fc.Arbitrary<DamageItem['amount']> = fc.oneof(
  { weight: 4, arbitrary: dollars },
  {
    weight: 2,
    arbitrary: fc.tuple(dollars, dollars).map(([a, b]) => ({ low: Math.min(a, b), high: Math.max(a, b) })),
  },
  { weight: 1, arbitrary: fc.constant('unknown' as const) },
);

const vessel = (id: string): fc.Arbitrary<Vessel> =>
  fc.record({
    id: fc.constant(id),
    use: fc.constantFrom('rental', 'recreational', 'staff-operated', 'passenger-for-hire'),
    numbered: mostlyYes,
    inspected: fc.constant('no' as const),
    documented: mostlyNo,
    motorized: mostlyYes,
    completeLoss: mostlyNo,
    stateOfNumber: fc.constant('TX'),
  });

/** "Serious" is ruled out by none or first aid alone, whatever is unknown beside it; so those stay known here. */
const consistent = (one: Person): Person =>
  one.care === 'none' || one.care === 'first-aid'
    ? { ...one, lostConsciousness: 'no', inpatient: 'no' }
    : one;

const person = (id: string): fc.Arbitrary<Person> => {
  const harm = {
    id: fc.constant(id),
    lostConsciousness: mostlyNo,
    carriedFromScene: mostlyNo,
    inpatient: mostlyNo,
    amputation: fc.constant('no' as const),
    eyeLoss: fc.constant('no' as const),
    incapacitatedHours: mostly<number | 'unknown'>(fc.constantFrom(0, 24, 25, 80), fc.constant('unknown')),
    care: fc.constantFrom('none', 'first-aid', 'beyond-first-aid', 'unknown'),
  } as const;
  const people: fc.Arbitrary<Person> = fc.oneof(
    fc.record({ id: fc.constant(id), outcome: fc.constant('unhurt' as const) }),
    fc.record({ ...harm, outcome: fc.constant('injured' as const) }),
    fc.record(
      {
        ...harm,
        outcome: fc.constant('died' as const),
        diedAt: fc.constantFrom(
          '2026-06-13T18:00:00Z',
          '2026-06-14T16:20:00Z',
          '2026-06-14T16:21:00Z',
          '2026-06-20T16:20:00Z',
        ),
      },
      { requiredKeys: ['id', 'outcome', 'care', 'amputation', 'eyeLoss'] },
    ),
    fc.record(
      {
        id: fc.constant(id),
        outcome: fc.constant('missing' as const),
        missingSince: fc.constant('2026-06-13T17:00:00Z'),
      },
      { requiredKeys: ['id', 'outcome'] },
    ),
    fc.record({ id: fc.constant(id), outcome: fc.constant('not-back' as const), signsOfHarm: ternary }),
    fc.record({ id: fc.constant(id), outcome: fc.constant('unknown' as const) }),
  );
  return people.map(consistent);
};

/** One damage may be a range or unknown; the other is known, so that its ends reach both sides of every limit. */
const damage = (id: string, much: fc.Arbitrary<DamageItem['amount']>): fc.Arbitrary<DamageItem> =>
  fc.record(
    {
      id: fc.constant(id),
      of: fc.constantFrom('vessel', 'vessel-equipment', 'boating-infrastructure', 'other-property'),
      vessel: fc.constant('A'),
      owner: fc.constantFrom('business', 'marina'),
      amount: much,
    },
    { requiredKeys: ['id', 'of', 'vessel', 'owner', 'amount'] },
  );

/** Small documents over one state, with unknowns of every kind. */
export function arbitraryFacts(states: readonly string[]): fc.Arbitrary<IncidentFacts> {
  return fc.record({
    schemaVersion: fc.constant(1 as const),
    occurredAt: fc.constant('2026-06-13T11:20:00-05:00'),
    place: fc.constantFrom(...states).map((state) => ({ states: [state], timeZone: 'America/Chicago' })),
    federalWaters: mostlyYes,
    involvesVesselOrEquipment: mostlyYes,
    casualtyTypes: fc.constantFrom(['grounding'], []),
    everyoneAccountedFor: mostly<'yes' | 'no' | 'unknown'>(fc.constant('yes'), ternary),
    operatorAbleToReport: ternary,
    officerAtScene: ternary,
    officerFiledReport: fc.constant('no' as const),
    vessels: mostly<Vessel[]>(
      fc.tuple(vessel('A')),
      fc
        .constantFrom(0, 2)
        .chain((count) => fc.tuple(vessel('A'), vessel('B')).map((all) => all.slice(0, count))),
    ),
    peopleAssessment: mostly<IncidentFacts['peopleAssessment']>(
      fc.constant('complete'),
      fc.constant('partial'),
    ),
    people: fc
      .tuple(fc.nat({ max: 2 }), person('p1'), person('p2'))
      .map(([count, ...all]) => all.slice(0, count)),
    damageAssessment: mostly<IncidentFacts['damageAssessment']>(
      fc.constant('complete'),
      fc.constant('partial'),
    ),
    damage: fc
      .tuple(fc.nat({ max: 2 }), damage('d1', amount), damage('d2', dollars))
      .map(([count, ...items]) => items.slice(0, count)),
  });
}
