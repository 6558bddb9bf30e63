import { describe, expect, it } from 'vitest';
import { chooseVocabulary, type VocabularyList } from '../../shared/vocabulary/choose-vocabulary.js';
import { federalWordsFor, stateLabels } from '../../shared/vocabulary/state-labels.js';

const { lists } = chooseVocabulary('2026-06-13');
const listOf = (id: string): VocabularyList => {
  const found = lists.find((list) => list.id === id);
  if (found === undefined) throw new Error(`There is no list ${id}.`);
  return found;
};
const labelsOf = (id: string): string[] => listOf(id).words.map(({ label }) => label);

/** 33 CFR 174.19(a): the authorized terms of each paragraph, in its order where it is alphabetical. */
const AUTHORIZED: readonly (readonly [string, string, readonly string[]])[] = [
  [
    'primary-operations',
    '(6)',
    [
      'Charter fishing',
      'Commercial fishing',
      'Commercial passenger carrying',
      'Dealer or manufacturer demonstration',
      'Other commercial operation',
      'Pleasure',
      'Rent or lease',
    ],
  ],
  [
    'vessel-types',
    '(11)',
    [
      'Airboat',
      'Auxiliary sail',
      'Cabin motorboat',
      'Houseboat',
      'Inflatable boat',
      'Open motorboat',
      'Paddlecraft',
      'Personal watercraft',
      'Pontoon boat',
      'Rowboat',
      'Sail only',
      'Other',
    ],
  ],
  [
    'hull-materials',
    '(12)',
    ['Aluminum', 'Fiberglass', 'Plastic', 'Rubber/vinyl/canvas', 'Steel', 'Wood', 'Other'],
  ],
  ['propulsions', '(13)', ['Air thrust', 'Manual', 'Propeller', 'Sail', 'Water jet', 'Other']],
  ['engine-drives', '(14)', ['Inboard', 'Outboard', 'Pod drive', 'Sterndrive', 'Other']],
  ['fuels', '(15)', ['Electric', 'Diesel', 'Gas', 'Other']],
];

describe('the federal words', () => {
  it.each(AUTHORIZED)('are those of 33 CFR 174.19(a): %s %s', (id, paragraph, labels) => {
    expect(labelsOf(id)).toEqual(labels);
    for (const { source, basis } of listOf(id).words) {
      expect(source).toContain(`33 CFR 174.19(a)${paragraph}`);
      expect(basis).toBe('read');
    }
  });

  it('hold the operations that 33 CFR 173.57(b)(21) names', () => {
    const told = [...labelsOf('operations'), ...labelsOf('activities')];
    expect(told).toEqual(
      expect.arrayContaining(['Cruising', 'Drifting', 'Fishing', 'Hunting', 'Skiing', 'Racing', 'Other']),
    );
  });

  it('hold the thirty contributing factors of the statistics of 2023 in five groups', () => {
    const { words } = listOf('contributing-factors');
    const groups = new Map<string, number>();
    for (const { group = '' } of words) groups.set(group, (groups.get(group) ?? 0) + 1);
    expect([...groups.values()]).toEqual([12, 4, 3, 6, 5]);
  });

  it.each(lists.map((list) => [list.id, list] as const))(
    'have a slug, a source and a basis each: %s',
    (_, { words }) => {
      expect(new Set(words.map(({ slug }) => slug)).size).toBe(words.length);
      for (const { slug, label, source, basis } of words) {
        expect(slug).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
        expect([label, source].every((one) => one.trim() !== '')).toBe(true);
        expect(['read', 'read-secondary', 'memory']).toContain(basis);
      }
    },
  );

  // Known from memory alone, and marked so.
  it.each([
    ['operations', ['changing-speed', 'towing-a-person', 'sailing', 'idling']],
    ['activities', ['wake-sports', 'whitewater', 'making-repairs', 'fueling']],
    ['causes-of-death', ['hypothermia', 'other']],
    ['experience-bands', ['under-10-hours']],
    ['water-conditions', []],
    ['winds', []],
  ])('mark what is from memory: %s', (id, slugs) => {
    const recalled = listOf(id).words.filter(({ basis }) => basis === 'memory');
    expect(recalled.map(({ slug }) => slug)).toEqual(slugs);
  });
});

describe('the version of the words', () => {
  // CG-BSX Policy Letter 23-01 CH-1 is for occurrences from 1 January 2024; its labels have not been read.
  it.each([
    ['2012-06-01', '2013', false],
    ['2023-12-31', '2013', false],
    ['2024-01-01', '2024', true],
    ['2026-06-13', '2024', true],
  ] as const)('goes by the day of the occurrence: %s', (day, version, doubtful) => {
    const chosen = chooseVocabulary(day);
    expect(chosen.version).toBe(version);
    expect(chosen.note !== null && /have not been read/.test(chosen.note)).toBe(doubtful);
  });
});

describe('the labels of states', () => {
  it.each(stateLabels.map((one) => [`${one.state} ${one.list}`, one] as const))(
    'lead to words that the federal list has: %s',
    (_, { list, labels }) => {
      const slugs = listOf(list).words.map(({ slug }) => slug);
      for (const { federal, note } of labels) {
        for (const slug of federal) expect(slugs).toContain(slug);
        if (federal.length !== 1) expect(note).toBeTruthy();
      }
    },
  );

  it.each<[string, string, readonly string[] | undefined]>([
    ['AL', 'STRUCK BY PROPELLER', ['person-struck-by-propeller']],
    ['AL', 'Vessel wake damage', []],
    ['PA', 'Person leaves vessel', ['person-departed-vessel']],
    ['PA', 'Fallen skier', undefined],
    ['TX', 'Grounding', undefined],
  ])('are found by state and label, capitals apart: %s %s', (state, said, federal) => {
    expect(federalWordsFor(state, 'casualty-types', said)?.federal).toEqual(federal);
  });

  it('leave it to a person which vessel was hit', () => {
    expect(federalWordsFor('AL', 'casualty-types', 'Collision with vessel')?.federal).toHaveLength(3);
  });
});
