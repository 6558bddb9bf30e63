import { describe, expect, it } from 'vitest';
import rescue from '../../fixtures/facts/good/attendant-hurt-in-a-rescue.json' with { type: 'json' };
import type { Duty } from '../../shared/determination/determination.js';
import type { IncidentFacts } from '../../shared/record/incident-facts.js';
import { determineFacts, dutyOf } from './situation.js';

/**
 * Two of our PWC collide on Lake Texoma (Texas) at 14:05 on 11 July 2026; the business knows at 14:12. One customer
 * needs stitches. The attendant who goes to help with a boat that bears a state number is hurt and admitted to hospital at
 * 16:40. Fuel leaves a sheen. Damage comes to $2,300. Every expectation was worked out by hand from the text that it cites.
 */
const facts = rescue as IncidentFacts;
const found = determineFacts(facts);

interface Expected {
  readonly outcome: Duty['outcome'];
  readonly dueAt: string | null;
  readonly immediate: boolean;
  readonly reporters: readonly string[];
  readonly citations: readonly string[];
  readonly open?: readonly (string | null)[];
}

const EXPECTED: Readonly<Record<string, Expected>> = {
  // 33 CFR 173.55(a)(2) and (3): an injury beyond first aid, and damage of $2,000 or more; (b)(2): 48 hours from the
  // occurrence for the injury, which comes before the 10 days of (b)(3). 173.51(a): the rentals are used for recreation,
  // and the staff boat must be numbered, so each of the three operators reports.
  'us/accident-report': {
    outcome: 'required',
    dueAt: '2026-07-13T14:05:00-05:00',
    immediate: false,
    reporters: ['pwc-4 operator', 'pwc-9 operator', 'rescue operator'],
    citations: ['33 CFR 173.55(a)(2)', '33 CFR 173.55(a)(3)', '33 CFR 173.55(b)(2)'],
  },
  // 33 CFR 173.53(a): only a death or a disappearance, and there was none.
  'us/death-or-disappearance-notice': {
    outcome: 'not-required',
    dueAt: null,
    immediate: false,
    reporters: [],
    citations: ['33 CFR 173.53(a)'],
  },
  // 46 U.S.C. 2303(a): the individual in charge of a vessel involved in a marine casualty assists and identifies, at once.
  'us/assistance-duty': {
    outcome: 'required',
    dueAt: '2026-07-11T14:05:00-05:00',
    immediate: true,
    reporters: ['pwc-4 person-in-charge', 'pwc-9 person-in-charge', 'rescue person-in-charge'],
    citations: ['46 U.S.C. 2303(a)', '46 U.S.C. 2303(a)(1) and (2)', '46 CFR 26.03-5(a)'],
  },
  // 46 CFR 26.03-5(b): an undocumented vessel that is not inspected reports under 33 CFR part 173, so neither 4.05-1 nor
  // 4.05-10 nor 4.06-3 reaches the numbered staff boat.
  'us/marine-casualty-notice': {
    outcome: 'not-required',
    dueAt: null,
    immediate: false,
    reporters: [],
    citations: ['46 CFR 26.03-5(b)'],
  },
  'us/marine-casualty-report': {
    outcome: 'not-required',
    dueAt: null,
    immediate: false,
    reporters: [],
    citations: ['46 CFR 26.03-5(b)'],
  },
  'us/alcohol-test': {
    outcome: 'not-required',
    dueAt: null,
    immediate: false,
    reporters: [],
    citations: ['46 CFR 26.03-5(b)'],
  },
  'us/drug-test': {
    outcome: 'not-required',
    dueAt: null,
    immediate: false,
    reporters: [],
    citations: ['46 CFR 26.03-5(b)'],
  },
  // 40 CFR 110.3 (a sheen), 110.6 (the person in charge) and 33 CFR 153.203 (the Center, immediately on knowing: 14:12).
  'us/oil-discharge-notice': {
    outcome: 'required',
    dueAt: '2026-07-11T14:12:00-05:00',
    immediate: true,
    reporters: ['pwc-4 person-in-charge', 'pwc-9 person-in-charge', 'rescue person-in-charge'],
    citations: ['40 CFR 110.3', '33 CFR 153.203', '40 CFR 110.6'],
  },
  // 29 CFR 1904.39(a)(2): 24 hours after the in-patient admission of an employee; (b)(6): it came within 24 hours of the
  // incident; (b)(7): the business knew of the incident before, so the clock runs from the admission, 16:40.
  'us/workplace-injury-report': {
    outcome: 'required',
    dueAt: '2026-07-12T16:40:00-05:00',
    immediate: false,
    reporters: ['null employer'],
    citations: ['29 CFR 1904.39(a)(2)', '29 CFR 1904.39(a)'],
  },
  // Tex. Parks & Wild. Code 31.105: more than $2,000 of damage, and an injury; the report within 30 days.
  'us-tx/accident-report': {
    outcome: 'required',
    dueAt: '2026-08-10T14:05:00-05:00',
    immediate: false,
    reporters: ['pwc-4 operator', 'pwc-9 operator', 'rescue operator'],
    citations: [],
  },
};

describe('an attendant hurt in a rescue after two of our craft collided, with a sheen', () => {
  it('gives every duty in one determination, federal first, and asks nothing more', () => {
    expect(found.duties.map(({ id }) => id)).toEqual(Object.keys(EXPECTED));
    expect(found.notAsked).toEqual([]);
  });

  it.each(Object.entries(EXPECTED))('%s', (id, expected) => {
    const duty = dutyOf(found, id);
    expect(duty).toMatchObject({
      outcome: expected.outcome,
      dueAt: expected.dueAt,
      immediate: expected.immediate,
    });
    expect(duty.citations).toEqual(expect.arrayContaining([...expected.citations]));
    expect(duty.questions.map(({ fact }) => fact)).toEqual(expected.open ?? []);
    if (expected.outcome === 'required') {
      expect(duty.reporters.map(({ vessel, who }) => `${vessel} ${who}`)).toEqual(expected.reporters);
    }
  });

  it('says who is called where the law names a number', () => {
    expect(dutyOf(found, 'us/oil-discharge-notice').telephone?.number).toBe('800-424-8802');
    expect(dutyOf(found, 'us/workplace-injury-report').telephone?.number).toBe('1-800-321-6742');
    expect(dutyOf(found, 'us/workplace-injury-report').reasons).toContainEqual(
      expect.objectContaining({ trigger: 'remark/ask-counsel' }),
    );
  });

  it('says what was not asked where nobody stated it, and calls no duty up for it', () => {
    const { oilSheen, ...unsaid } = facts;
    expect(oilSheen).toBe('yes');
    const people = facts.people.map((person) => ({ ...person }));
    for (const person of people) delete person.employee;
    const { duties, notAsked } = determineFacts({ ...unsaid, people });
    expect(duties.map(({ id }) => id)).not.toContain('us/oil-discharge-notice');
    expect(notAsked?.map(({ duty, fact }) => `${duty} ${fact}`)).toEqual([
      'us/oil-discharge-notice /oilSheen',
      'us/workplace-injury-report /people/0/employee',
      'us/workplace-injury-report /people/2/employee',
    ]);
  });
});
