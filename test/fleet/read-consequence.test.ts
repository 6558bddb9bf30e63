import { describe, expect, it } from 'vitest';
import { readConsequence } from '../../shared/law/read-consequence.js';
import type { IncidentFacts, Person } from '../../shared/record/incident-facts.js';
import { type Consequence, type Gravity, weighConsequence } from '../../shared/record/weigh-consequence.js';

const FACTS: IncidentFacts = {
  schemaVersion: 1,
  occurredAt: '2026-06-13T11:20:00-05:00',
  place: {},
  casualtyTypes: [],
  everyoneAccountedFor: 'yes',
  vessels: [{ id: 'v1', use: 'rental' }],
  peopleAssessment: 'complete',
  people: [{ id: 'p1', outcome: 'unhurt' }],
  damageAssessment: 'complete',
  damage: [],
};
const person = (different: Partial<Person>): Pick<IncidentFacts, 'people'> => ({
  people: [FACTS.people[0] as Person, { id: 'p2', outcome: 'unknown', ...different }],
});

describe('what the facts say about the craft', () => {
  it.each<[Gravity, string, Partial<IncidentFacts>, Partial<Consequence>]>([
    [
      'damage-only',
      'everyone is unhurt',
      {},
      { died: 'no', missing: 'no', beyondFirstAid: 'no', hurt: 'no' },
    ],
    ['damage-only', 'nobody was there', { people: [] }, { hurt: 'no' }],
    ['unclear', 'nobody was listed yet', { people: [], peopleAssessment: 'not-yet' }, { died: 'unknown' }],
    [
      'unclear',
      'some are not listed',
      { peopleAssessment: 'partial' },
      { died: 'unknown', missing: 'unknown' },
    ],
    ['unclear', 'not all are accounted for', { everyoneAccountedFor: 'unknown' }, { missing: 'unknown' }],
    ['unclear', 'somebody is unheard of', person({ outcome: 'unknown' }), { died: 'unknown' }],
    ['unclear', 'a craft is not back', person({ outcome: 'not-back' }), { missing: 'unknown' }],
    [
      'grave',
      'it is not back, with signs of harm',
      person({ outcome: 'not-back', signsOfHarm: 'yes' }),
      { missing: 'yes' },
    ],
    ['grave', 'somebody died', person({ outcome: 'died' }), { died: 'yes' }],
    [
      'grave',
      'somebody died, and others are not listed',
      { ...person({ outcome: 'died' }), peopleAssessment: 'partial' },
      { died: 'yes' },
    ],
    ['grave', 'somebody is missing', person({ outcome: 'missing' }), { missing: 'yes' }],
    [
      'grave',
      'somebody had stitches',
      person({ outcome: 'injured', treatments: ['sutures-staples-or-glue'] }),
      { beyondFirstAid: 'yes' },
    ],
    [
      'unclear',
      'the care is not known',
      person({ outcome: 'injured' }),
      { beyondFirstAid: 'unknown', hurt: 'yes' },
    ],
    [
      'hurt',
      'first aid was enough',
      person({ outcome: 'injured', care: 'first-aid' }),
      { beyondFirstAid: 'no', hurt: 'yes' },
    ],
    [
      'grave',
      '"unhurt" contradicts the care',
      person({ outcome: 'unhurt', care: 'beyond-first-aid' }),
      { beyondFirstAid: 'yes' },
    ],
  ])('%s when %s', (gravity, _name, facts, expected) => {
    const consequence = readConsequence({ ...FACTS, ...facts }, false);
    expect(consequence).toMatchObject(expected);
    expect(weighConsequence(consequence)).toBe(gravity);
  });

  it('a claim is grave whatever else is known', () => {
    expect(weighConsequence(readConsequence(FACTS, true))).toBe('grave');
  });

  it.each<[string, Partial<IncidentFacts>, Consequence['damage']]>([
    ['nothing was damaged', {}, { lowCents: 0, highCents: 0 }],
    [
      'all figures are there, personal property among them',
      {
        damage: [
          { id: 'd1', of: 'vessel', amount: 120.5 },
          { id: 'd2', of: 'personal-property', amount: { low: 10, high: 40 } },
        ],
      },
      { lowCents: 13_050, highCents: 16_050 },
    ],
    ['a figure is unknown', { damage: [{ id: 'd1', of: 'vessel', amount: 'unknown' }] }, null],
    ['not all damage is listed', { damageAssessment: 'partial' }, null],
  ])('damage where %s', (_name, facts, damage) => {
    expect(readConsequence({ ...FACTS, ...facts }, false).damage).toEqual(damage);
  });
});
