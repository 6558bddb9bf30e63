import { jsonPointer } from '../kernel/json-pointer.js';
import type { Ternary } from '../kernel/truth.js';
import type { NoticeRule, Occasion } from '../law/rule-pack.js';
import type { IncidentFacts, Vessel } from '../record/incident-facts.js';
import { COMMERCIAL_USES } from './commercial-service.js';
import type { Question } from './determination.js';

/** Two vessels met, or one met a person: then there is somebody to stop for, to assist and to give a name to. */
const MEETINGS = [
  'collision-with-recreational-vessel',
  'collision-with-commercial-vessel',
  'collision-with-government-vessel',
  'person-struck-by-vessel',
  'person-struck-by-propeller',
];

/**
 * Whether the facts speak of what a duty on another matter is about. What is stated as unknown does: it may be so.
 * @example isRaised({ raisedBy: ['oil-sheen'] }, { ...facts, oilSheen: 'unknown' }) // true
 */
export function isRaised({ raisedBy = [] }: Pick<NoticeRule, 'raisedBy'>, facts: IncidentFacts): boolean {
  return raisedBy.some((occasion) => OCCASIONS[occasion](facts));
}

/** The facts that nobody has stated and that could call a duty up, each as a question. */
export function unaskedOf({ raisedBy = [] }: Pick<NoticeRule, 'raisedBy'>, facts: IncidentFacts): Question[] {
  return raisedBy.flatMap((occasion) => UNASKED[occasion]?.(facts) ?? []);
}

const OCCASIONS: Readonly<Record<Occasion, (facts: IncidentFacts) => boolean>> = {
  employee: ({ people }) => people.some(({ employee }) => mayBe(employee)),
  'oil-sheen': ({ oilSheen }) => mayBe(oilSheen),
  'commercial-vessel': ({ vessels }) => vessels.some(mayBeCommercial),
  'vessels-met': ({ casualtyTypes }) => casualtyTypes.some((type) => MEETINGS.includes(type)),
  'rental-told': ({ vessels }) =>
    vessels.some(({ ours, use, rental }) => ours === true && use === 'rental' && rental !== undefined),
};

const UNASKED: Partial<Record<Occasion, (facts: IncidentFacts) => Question[]>> = {
  employee: ({ people }) =>
    people.flatMap(({ id, employee, outcome }, index) =>
      employee === undefined && outcome !== 'unhurt'
        ? [
            {
              fact: jsonPointer(['people', index, 'employee']),
              text: `Was ${id} an employee of the business, at work?`,
            },
          ]
        : [],
    ),
  'oil-sheen': ({ oilSheen }) =>
    oilSheen === undefined
      ? [{ fact: '/oilSheen', text: 'Was there a film or sheen of oil or fuel on the water or the shore?' }]
      : [],
};

function mayBeCommercial({ use, inspected, passengersForHire, charter }: Vessel): boolean {
  return (
    COMMERCIAL_USES.includes(use) || mayBe(inspected) || mayBe(passengersForHire) || charter !== undefined
  );
}

function mayBe(answer: Ternary | undefined): boolean {
  return answer === 'yes' || answer === 'unknown';
}
