import { describe, expect, it } from 'vitest';
import { type AdoptedRules, type HouseRuleId, rulesOn } from '../../shared/follow-up/house-rule.js';
import { observeHouseRules } from '../../shared/follow-up/observe-house-rules.js';
import type { Craft } from '../../shared/record/craft-section.js';
import type { PersonRecord } from '../../shared/record/people-section.js';
import type { Quantity } from '../../shared/record/quantity-as-entered.js';
import type { RecordSections } from '../../shared/record/incident-record.js';
import { HOUSE_RULES, onTheWater, recordOf, saw, UNHURT } from './situations.js';

const ADOPTED: AdoptedRules = {
  adoptedOn: '2026-05-01',
  document: 'Dock rules, edition 3',
  rules: HOUSE_RULES.map(({ id, value }) => ({ id, value })),
};
const stands = (
  id: HouseRuleId,
  sections: Partial<RecordSections>,
  people: PersonRecord[] = [UNHURT],
): string[] =>
  observeHouseRules(onTheWater(people, sections), ADOPTED)
    .filter(({ rule }) => rule === id)
    .map((one) => one.stands);

describe('the rules of a day', () => {
  const older = { ...ADOPTED, adoptedOn: '2025-04-01' };
  it.each([
    ['2025-03-31', null],
    ['2025-04-01', '2025-04-01'],
    ['2026-04-30', '2025-04-01'],
    ['2026-05-01', '2026-05-01'],
  ])('on %s are those adopted on %s', (day, adoptedOn) => {
    expect(rulesOn([ADOPTED, older], day)?.adoptedOn ?? null).toBe(adoptedOn);
    expect(rulesOn([older, ADOPTED], day)?.adoptedOn ?? null).toBe(adoptedOn);
  });
  it('are none before any were adopted', () => {
    expect(rulesOn([], '2026-06-13')).toBeNull();
  });
});

describe('what a record shows beside adopted rules', () => {
  it('is nothing of rules that were not adopted', () => {
    expect(observeHouseRules(onTheWater([UNHURT]), { ...ADOPTED, rules: [] })).toEqual([]);
  });

  it.each<[Quantity, string]>([
    [{ amount: 3, unit: 'ft' }, 'as-adopted'],
    [{ amount: 2.9, unit: 'ft' }, 'differs'],
    [{ amount: 1, unit: 'm' }, 'as-adopted'],
    [{ amount: 35, unit: 'in' }, 'differs'],
    [{ amount: 5, unit: 'kn' }, 'not-known'],
  ])('water of %j at 3 ft: %s', (depth, expected) => {
    expect(stands('least-depth', { conditions: { waterDepth: saw(depth) } })).toEqual([expected]);
  });

  it.each<[number | undefined, number | undefined, string[]]>([
    [17, 1, ['differs']],
    [17, 2, ['as-adopted']],
    [17, undefined, ['not-known']],
    [undefined, 1, ['not-known']],
    [18, 1, []],
  ])('a rider of %s years with %s aboard: %j', (age, aboard, expected) => {
    const rider: PersonRecord = { ...UNHURT, ...(age !== undefined && { age: saw(age) }) };
    const craft: Craft = { id: 'c1', ours: true, ...(aboard !== undefined && { aboard: saw(aboard) }) };
    expect(stands('minors-not-alone', { craft: { craft: [craft] } }, [rider])).toEqual(expected);
  });

  it.each([
    ['worn', 'as-adopted'],
    ['not-worn', 'differs'],
    ['aboard-not-worn', 'differs'],
    ['unknown', 'not-known'],
  ] as const)('a life jacket %s: %s', (lifeJacket, expected) => {
    expect(stands('life-jacket-always', {}, [{ ...UNHURT, lifeJacket: saw(lifeJacket) }])).toEqual([
      expected,
    ]);
  });

  it('asks nobody ashore for a life jacket, and a lanyard only of the operator', () => {
    const ashore: PersonRecord = { id: 'p2', role: saw('ashore'), lifeJacket: saw('none-aboard') };
    expect(stands('life-jacket-always', {}, [ashore])).toEqual(['not-known']);
    const passenger: PersonRecord = { id: 'p3', role: saw('passenger'), lanyard: saw('not-clipped') };
    const operator: PersonRecord = { ...UNHURT, lanyard: saw('clipped') };
    expect(stands('lanyard-always', {}, [operator, passenger])).toEqual(['as-adopted']);
  });

  // Lake Texoma on 13 June 2026: sunset about 20:36 local, by the same tables as `light-at`.
  it.each([
    ['2026-06-13T15:00:00-05:00', 'as-adopted'],
    ['2026-06-13T20:50:00-05:00', 'differs'],
    ['2026-06-13T05:30:00-05:00', 'differs'],
  ])('towing at %s: %s', (at, expected) => {
    const towing: Craft = { id: 'c1', ours: true, name: 'Boat 1', beingTowed: saw(1), aboard: saw(1) };
    const sections = {
      craft: { craft: [towing] },
      'time-and-place': {
        occurred: saw({ at, precision: 'to-the-minute' as const }),
        position: saw({ latitude: 33.82, longitude: -96.57 }),
      },
    };
    expect(stands('no-towing-in-the-dark', sections)).toEqual([expected]);
    expect(stands('observer-when-towing', sections)).toEqual(['differs']);
  });

  it('says nothing of towing where every craft towed nobody, and that it is not known before', () => {
    const sections = { craft: { craft: [{ id: 'c1', beingTowed: saw(0) }] } };
    expect(stands('observer-when-towing', sections)).toEqual([]);
    expect(stands('observer-when-towing', {})).toEqual(['not-known']);
  });

  it('says so where the record cannot tell, and blames nobody', () => {
    const observations = observeHouseRules(recordOf({}), ADOPTED);
    expect(new Set(observations.map((one) => one.stands))).toEqual(new Set(['not-known']));
    expect(observations.map(({ text }) => text).join(' ')).not.toMatch(
      /fault|blame|violat|breach|careless|negligen/i,
    );
  });
});
