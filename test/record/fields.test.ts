import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildSection } from '../../shared/record/build-section.js';
import { findForbiddenChanges } from '../../shared/record/check-amendment.js';
import { findChanges } from '../../shared/record/find-changes.js';
import { flattenSection } from '../../shared/record/flatten-section.js';
import { sameJson, type JsonObject } from '../../shared/record/json-value.js';
import { replayAmendments } from '../../shared/record/replay-amendments.js';
import { sectionWords } from '../../shared/record/section-words.js';
import { summarizeSection } from '../../shared/record/summarize-section.js';
import { SECTION_NAMES } from '../../shared/record/incident-record.js';
import { sectionSchema } from '../../shared/wire/record-sections.js';
import { arbitraryOf } from './arbitrary-record.js';

const section = fc
  .constantFrom(...SECTION_NAMES)
  .chain((name) => arbitraryOf(sectionSchema(name))) as fc.Arbitrary<JsonObject>;
/** Two documents of one section. */
const twoStates = fc.constantFrom(...SECTION_NAMES).chain((name) => {
  const one = arbitraryOf(sectionSchema(name)) as fc.Arbitrary<JsonObject>;
  return fc.tuple(one, one);
});

describe('the fields of a section', () => {
  it('name items by id, and keep a fact with its provenance whole', () => {
    const outcome = { value: 'injured', known: 'told', by: 'her sister' };
    const people = [{ id: 'p2', outcome, minor: { guardian: 'Ann' } }, { id: 'p1' }];
    expect(Object.fromEntries(flattenSection({ people, said: ['a', 'b'] }))).toEqual({
      '/people': ['p2', 'p1'],
      '/people/p2/id': 'p2',
      '/people/p2/outcome': outcome,
      '/people/p2/minor/guardian': 'Ann',
      '/people/p1/id': 'p1',
      '/said': ['a', 'b'],
    });
  });

  it('make the section again', () => {
    fc.assert(
      fc.property(section, (document) => {
        const built = buildSection(flattenSection(document));
        expect(findChanges(document, built)).toEqual([]);
        expect(sameJson(buildSection(flattenSection(built)), built)).toBe(true);
      }),
    );
  });

  it('that changed, replayed one after the other, lead from one state to the next', () => {
    fc.assert(
      fc.property(twoStates, ([first, second]) => {
        const step = (sequence: number, before: JsonObject, after: JsonObject) => ({
          sequence,
          section: 'any',
          changes: findChanges(before, after).map(({ path, to }) => ({ path, to: { value: to } })),
        });
        const replayed = replayAmendments([step(1, {}, first), step(2, first, second)]).get('any');
        expect(findChanges(replayed?.document ?? {}, second)).toEqual([]);
        expect(replayed).toMatchObject({ version: 2, latestAmendment: 2, finished: false, withdrawn: [] });
      }),
    );
  });

  it('change by what is said, not by the order of members', () => {
    expect(findChanges({ a: 1, b: { c: 2, d: 3 } }, { b: { d: 3, c: 2 }, a: 1 })).toEqual([]);
    expect(findChanges({ items: [{ id: 'x' }, { id: 'y' }] }, { items: [{ id: 'y' }, { id: 'x' }] })).toEqual(
      [{ path: '/items', from: ['x', 'y'], to: ['y', 'x'] }],
    );
  });
});

describe('a section is found', () => {
  it.each<[string, JsonObject, string]>([
    [
      'by what was said and by whom, not by ids and times',
      {
        people: [
          { id: 'p1', craft: 'c1', name: 'Señora Díaz', seat: { value: 'Rear', known: 'told', by: 'Bo' } },
        ],
      },
      'senora diaz rear bo',
    ],
    [
      'not by what points to something else',
      {
        findings: [{ id: 'f1', damageLine: 'd1', what: 'Scratch' }],
        departedAt: { value: '2026', known: 'saw' },
      },
      'scratch',
    ],
    [
      'by what an officer was given',
      { handedOver: [{ id: 'h1', officer: 'o1', sheet: { owner: 'Lake Rentals', riders: ['Bo', 'Cy'] } }] },
      'lake rentals bo cy',
    ],
  ])('%s', (_what, document, words) => {
    expect(sectionWords(document)).toBe(words);
  });
});

describe('what stays as it was given', () => {
  it.each([
    ['/statements/s1/words', true],
    ['/statements/s1/addenda/a1/words', true],
    ['/statements/s1/translation', false],
    ['/handedOver/h1/sheet/owner', true],
    ['/handedOver/h1/what', true],
    ['/handedOver/h1/receipt', false],
    ['/officers/o1/name', false],
  ])('%s: %s', (path, lasting) => {
    const change = findForbiddenChanges([{ path, from: 'one', to: 'other' }]);
    expect(change.map(({ pointer }) => pointer)).toEqual(lasting ? [path] : []);
    expect(findForbiddenChanges([{ path, from: null, to: 'first' }])).toEqual([]);
  });
});

describe('the summary', () => {
  it('says how a craft that was not back turned out', () => {
    const overdue = { ended: { value: 'aground' as const, known: 'told' as const } };
    expect(summarizeSection('call', { kind: 'overdue', overdue })).toEqual({
      kind: 'overdue',
      ended: 'aground',
    });
  });
});

describe('a replay', () => {
  it('shows what was withdrawn as withdrawn until something else stands there, and that a section was finished', () => {
    const past = [
      { sequence: 4, section: 'call', changes: [{ path: '/said', to: null }] },
      { sequence: 7, section: 'call', changes: [{ path: 'finished', to: { value: true } }] },
      { sequence: 9, section: 'call', changes: [{ path: '/said', to: { value: null } }] },
    ];
    expect(replayAmendments(past.slice(0, 2)).get('call')).toEqual({
      document: {},
      version: 2,
      finished: true,
      latestAmendment: 7,
      withdrawn: ['/said'],
    });
    expect(replayAmendments(past).get('call')).toMatchObject({ version: 3, withdrawn: [] });
  });
});
