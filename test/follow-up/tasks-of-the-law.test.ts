import { beforeAll, describe, expect, it } from 'vitest';
import type { RulePack } from '../../shared/law/rule-pack.js';
import { loadRulePacks } from '../../src/server/law/law.api.js';
import { onTheWater, planOn, recordOf, saw, UNHURT } from './situations.js';

let packs: RulePack[];
beforeAll(async () => {
  packs = await loadRulePacks();
});

const templates = (record: Parameters<typeof planOn>[0]): string[] =>
  planOn(record, packs).map(({ template }) => template);

describe('work that a law asks for and no determination holds', () => {
  // 46 U.S.C. 2306(a): reason to believe that a vessel may be lost or imperiled, as when it does not appear.
  it.each([
    ['no', true],
    ['unknown', false],
    ['yes', false],
  ] as const)(
    'has the Coast Guard told of a craft that may be lost where everybody is found: %s',
    (found, told) => {
      const people = {
        everyoneAccountedFor: saw(found),
        assessment: saw('complete' as const),
        people: [UNHURT],
      };
      expect(templates(onTheWater([UNHURT], { people })).includes('lost-craft')).toBe(told);
      const theirs = { craft: { craft: [{ id: 'c9', ours: false, name: 'Bass boat' }] } };
      expect(templates(recordOf({ ...theirs, people }))).not.toContain('lost-craft');
    },
  );

  // As read in the law of each: A.R.S. 5-371, COMAR 08.04.08.01, Puerto Rico's Act 430-2000.
  it.each([
    [
      'AZ',
      /keep that for three months\. At least 3 months; .*\(A\.R\.S\. 5-371 .*read in the law itself\.\)/,
    ],
    ['MD', /keep the log 30 days .* At least 30 days;/],
    ['PR', /How long it is kept was not read\./],
    ['TX', /^Whether Texas has rentals written down, and kept for how long, was not read here/],
  ])('has the record of the rental set aside as the law has it kept, in %s', (state, why) => {
    const rentals = (sections: Parameters<typeof onTheWater>[1]) =>
      planOn(onTheWater([UNHURT], sections), packs).filter(({ template }) => template === 'rental-record');
    const place = { occurred: saw({ at: '2026-06-13T11:20:00-05:00', precision: 'to-the-minute' as const }) };
    const here = rentals({ 'time-and-place': { ...place, states: saw([state]) } });
    expect(here).toMatchObject([
      { key: `rental-record:${state}`, why: expect.stringMatching(why) as string },
    ]);
    const theirs = { craft: { craft: [{ id: 'c9', ours: false, use: saw('recreational' as const) }] } };
    expect(rentals({ ...theirs, 'time-and-place': { ...place, states: saw([state]) } })).toEqual([]);
  });
});
