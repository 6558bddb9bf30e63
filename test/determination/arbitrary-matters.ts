import fc from 'fast-check';
import type {
  CharterSigns,
  IncidentFacts,
  Person,
  RentalFacts,
  Vessel,
} from '../../shared/record/incident-facts.js';
import { quietGrounding } from './situation.js';

/** Codes of the packs of `forms/duties`. */
export const MATTERS = [
  'US-WORKPLACE-INJURY',
  'US-OIL-DISCHARGE',
  'US-MARINE-CASUALTY',
  'US-ASSISTANCE',
  'FL-LIVERY',
  'MI-LIVERY',
  'PA-LIVERY',
] as const;

const ternary = fc.constantFrom('yes' as const, 'no' as const, 'unknown' as const);
/** Mostly known, so that a document stays small enough for all its completions to be listed. */
const mostly = (known: 'yes' | 'no') =>
  fc.oneof({ weight: 4, arbitrary: fc.constant(known) }, { weight: 1, arbitrary: ternary });
const date = (time: string) => `2026-06-13T${time}:00-05:00`;

/** Small documents that speak of one matter, with unknowns of every kind that its law asks after. */
export function arbitraryMatter(code: string): fc.Arbitrary<IncidentFacts> {
  switch (code) {
    case 'US-WORKPLACE-INJURY':
      return document({
        people: fc
          .tuple(fc.nat({ max: 2 }), worker('p1'), worker('p2'))
          .map(([count, ...all]) => all.slice(0, count)),
        peopleAssessment: fc.constantFrom('complete' as const, 'complete' as const, 'partial' as const),
      });
    case 'US-OIL-DISCHARGE':
      return document({ oilSheen: ternary, federalWaters: ternary });
    case 'US-MARINE-CASUALTY':
      return document({
        ...{ oilSheen: mostly('no'), bridgeStruck: mostly('no'), propulsionOrSteeringLost: mostly('no') },
        seaworthinessImpaired: mostly('no'),
        casualtyTypes: fc.constantFrom(['collision-with-fixed-object'], ['grounding'], ['capsizing'], []),
        federalWaters: mostly('yes'),
        vessels: fc.tuple(worked('A')),
        people: fc.tuple(worker('p1')),
        damage: fc
          .constantFrom(0, 75_000, 75_000.01, 250_000, 'unknown' as const, { low: 0, high: 80_000 })
          .map((amount) => [{ id: 'd1', of: 'vessel' as const, vessel: 'A', amount }]),
      });
    case 'US-ASSISTANCE':
      return document({
        casualtyTypes: fc.constantFrom(
          ['collision-with-recreational-vessel'],
          ['person-struck-by-propeller'],
        ),
        federalWaters: ternary,
      });
    default:
      return document({
        place: fc.constant({ states: [code.slice(0, 2)], timeZone: 'America/Chicago' }),
        casualtyTypes: fc.constantFrom(['grounding'], []),
        vessels: fc.tuple(rented('A'), rented('B')).chain((both) => fc.constantFrom(both, both.slice(0, 1))),
        damageAssessment: fc.constantFrom('complete' as const, 'partial' as const),
        damage: fc
          .constantFrom(0, 500, 'unknown' as const)
          .map((amount) => [{ id: 'd1', of: 'vessel' as const, vessel: 'A', amount }]),
      });
  }
}

function document(parts: {
  [Member in keyof IncidentFacts]?: fc.Arbitrary<IncidentFacts[Member]>;
}): fc.Arbitrary<IncidentFacts> {
  return fc
    .record(parts as Record<string, fc.Arbitrary<unknown>>)
    .map((given) => ({ ...quietGrounding(), ...given }));
}

/** Somebody at work for the business, perhaps; what is not known of a harm is stated as such. */
function worker(id: string): fc.Arbitrary<Person> {
  const harm = {
    id: fc.constant(id),
    ...{ employee: ternary, inpatient: mostly('no'), amputation: mostly('no'), eyeLoss: mostly('no') },
    care: fc.constantFrom('none' as const, 'first-aid' as const, 'beyond-first-aid' as const),
    incapacitatedHours: fc.constantFrom(0, 8),
    lostConsciousness: fc.constant('no' as const),
    carriedFromScene: fc.constant('no' as const),
  };
  const admittedAt = fc.constantFrom(date('12:20'), '2026-06-14T11:20:00-05:00', '2026-06-14T11:21:00-05:00');
  const died = fc.constantFrom(date('12:20'), '2026-07-13T11:20:00-05:00', '2026-07-13T11:21:00-05:00');
  return fc.oneof(
    fc.record({ id: fc.constant(id), employee: ternary, outcome: fc.constant('unhurt' as const) }),
    fc.record({ ...harm, outcome: fc.constant('injured' as const) }),
    fc.record({
      ...harm,
      outcome: fc.constant('injured' as const),
      inpatient: fc.constant('yes' as const),
      admittedAt,
    }),
    fc.record({ ...harm, outcome: fc.constant('died' as const), diedAt: died }),
    fc.record({ ...harm, outcome: fc.constant('died' as const), inpatient: fc.constant('no' as const) }),
  );
}

const BAREBOAT: CharterSigns = {
  ...{ crewSupplied: 'no', ownerMayRefuseCrew: 'no', ownerAboard: 'no' },
  ...{ renterPaysFuel: 'yes', renterInsures: 'yes', surveyedBeforeAndAfter: 'yes' },
};

/** A craft that may be on the commercial route. */
function worked(id: string): fc.Arbitrary<Vessel> {
  return fc.record({
    ...{ id: fc.constant(id), ours: fc.constant(true), numbered: fc.constant('yes' as const) },
    use: fc.constantFrom('rental', 'staff-operated', 'passenger-for-hire'),
    ...{ inspected: mostly('no'), documented: ternary, motorized: fc.constant('yes' as const) },
    completeLoss: mostly('no'),
    stateOfNumber: fc.constant('TX'),
    passengersForHire: mostly('no'),
    charter: fc.constantFrom(
      BAREBOAT,
      { ...BAREBOAT, crewSupplied: 'unknown' },
      { ...BAREBOAT, ownerAboard: 'yes' },
    ),
  });
}

/** A craft that is rented out, with what was agreed about its return and what came of it. */
function rented(id: string): fc.Arbitrary<Vessel> {
  const rental: fc.Arbitrary<RentalFacts> = fc.record(
    {
      dueBackAt: fc.constantFrom(date('12:00'), date('18:00')),
      returnedAt: fc.constantFrom(date('12:00'), date('16:00'), date('16:01'), date('23:59')),
    },
    { requiredKeys: [] },
  );
  return rental.map((told) => ({
    ...{
      id,
      use: 'rental',
      ours: true,
      numbered: 'yes',
      inspected: 'no',
      documented: 'no',
      motorized: 'yes',
    },
    ...{ completeLoss: 'no', stateOfNumber: 'FL', rental: told },
  }));
}
