import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildSection } from '../../shared/record/build-section.js';
import { findChanges } from '../../shared/record/find-changes.js';
import { flattenSection } from '../../shared/record/flatten-section.js';
import { SECTION_NAMES } from '../../shared/record/incident-record.js';
import { type JsonObject, type JsonValue, sameJson } from '../../shared/record/json-value.js';
import { mergeEdits, takeSide } from '../../shared/record/merge-edits.js';
import { readSection } from '../../shared/wire/record-reading.js';
import { sectionSchema } from '../../shared/wire/record-sections.js';
import { arbitraryOf } from './arbitrary-record.js';

const told = (value: JsonValue, by?: string): JsonObject => ({
  value,
  known: 'told',
  ...(by !== undefined && { by }),
});

describe('two changes of one section', () => {
  it.each<[string, JsonObject, JsonObject, JsonObject, JsonObject]>([
    [
      'go together where they touch different fields',
      { people: [{ id: 'p1', name: 'Ann' }] },
      { people: [{ id: 'p1', name: 'Ann', phone: '580-555-0100' }] },
      { people: [{ id: 'p1', name: 'Ann', age: told(31) }] },
      { people: [{ id: 'p1', name: 'Ann', phone: '580-555-0100', age: told(31) }] },
    ],
    [
      'keep the items that each added',
      { entries: [{ id: 'e1' }] },
      { entries: [{ id: 'e1' }, { id: 'e2', what: 'Boat away' }] },
      { entries: [{ id: 'e1' }, { id: 'e3', what: 'On scene' }] },
      { entries: [{ id: 'e1' }, { id: 'e3', what: 'On scene' }, { id: 'e2', what: 'Boat away' }] },
    ],
    [
      'keep both words of a text, one under the other',
      { said: 'Help.' },
      { said: 'Two are in the water.' },
      { said: 'PWC 7 has turned over.' },
      { said: 'PWC 7 has turned over.\nTwo are in the water.' },
    ],
    [
      'keep what each wrote on',
      { said: 'Help.' },
      { said: 'Help. Two of them.' },
      { said: 'Help. At the point.' },
      { said: 'Help. At the point.\nTwo of them.' },
    ],
    [
      'keep both words of a fact, and who told each',
      {},
      { whatHappened: told('It turned over.', 'Ann') },
      { whatHappened: told('They fell off.', 'Bo') },
      { whatHappened: told('They fell off.\nIt turned over.', 'Bo; Ann') },
    ],
    [
      'keep both words whole where one wrote on in the middle of a sentence, and how each knows it',
      { weather: told('Clear') },
      { weather: { value: 'Clear, then clouds', known: 'saw', by: 'Ann' } },
      { weather: told('Clear until four') },
      { weather: told('Clear until four\nClear, then clouds', '(told); Ann (saw)') },
    ],
    [
      'say once what both said',
      {},
      { said: 'Help, two of them.' },
      { said: 'Help, two of them. At the point.' },
      { said: 'Help, two of them. At the point.' },
    ],
    [
      'leave out what one took out and the other left',
      {
        people: [
          { id: 'p1', name: 'Ann' },
          { id: 'p2', name: 'Bo' },
        ],
        x: 1,
      },
      { people: [{ id: 'p1', name: 'Ann' }], x: 1 },
      {
        people: [
          { id: 'p1', name: 'Ann' },
          { id: 'p2', name: 'Bo' },
        ],
        x: 2,
      },
      { people: [{ id: 'p1', name: 'Ann' }], x: 2 },
    ],
    [
      'keep an item whole that one took out and the other wrote in',
      {
        people: [
          { id: 'p1', name: 'Ann' },
          { id: 'p2', name: 'Bo' },
        ],
      },
      { people: [{ id: 'p1', name: 'Ann' }] },
      {
        people: [
          { id: 'p1', name: 'Ann' },
          { id: 'p2', name: 'Bo', phone: '1' },
        ],
      },
      {
        people: [
          { id: 'p1', name: 'Ann' },
          { id: 'p2', name: 'Bo', phone: '1' },
        ],
      },
    ],
    [
      'keep the order that one of them made, with what the other added',
      { casualtyTypes: ['grounding', 'capsizing'] },
      { casualtyTypes: ['capsizing', 'grounding'] },
      { casualtyTypes: ['grounding', 'capsizing', 'sinking'] },
      { casualtyTypes: ['capsizing', 'grounding', 'sinking'] },
    ],
  ])('%s', (_what, base, mine, theirs, merged) => {
    const { document, open } = mergeEdits(base, mine, theirs);
    expect(document).toEqual(merged);
    expect(open).toEqual([]);
  });

  it.each<[string, JsonValue, JsonValue]>([
    ['an answer of a closed list', told('yes'), told('no')],
    ['a figure', told(2), told(3)],
    ['an instant', told('2026-06-13T16:20:00Z'), told('2026-06-13T16:25:00Z')],
    ['an id', 'p1', 'p2'],
    ['a telephone number', '580-555-0100', '580-555-0101'],
  ])('leave %s to a person, and what is on record stands', (_what, mine, theirs) => {
    const { document, open, bothKept } = mergeEdits({}, { x: mine }, { x: theirs });
    expect(document).toEqual({ x: theirs });
    expect(open).toEqual([{ path: '/x', base: null, mine, theirs }]);
    expect(bothKept).toEqual([]);
    const [conflict] = open;
    if (conflict === undefined) throw new Error('There is a conflict.');
    expect(takeSide(document, conflict, 'mine')).toEqual({ x: mine });
    expect(takeSide(document, conflict, 'theirs')).toEqual({ x: theirs });
  });

  it('keep what was written where the other took it out, and ask', () => {
    const { document, open } = mergeEdits({ x: 'a b' }, {}, { x: 'a b c' });
    expect(document).toEqual({ x: 'a b c' });
    expect(open).toHaveLength(1);
    expect(takeSide(document, open[0] ?? fault(), 'mine')).toEqual({});
  });

  it('name the items that stay although one took them out', () => {
    const two = [{ id: 'p1' }, { id: 'p2', name: 'Bo' }];
    const { revived } = mergeEdits(
      { people: two },
      { people: [{ id: 'p1' }] },
      { people: [{ id: 'p1' }, { id: 'p2', name: 'Bob' }] },
    );
    expect(revived).toEqual(['/people/p2']);
  });

  it('give the order of a list to a person where both moved it, and lose nothing that is in it', () => {
    const base = { kinds: ['a', 'b', 'c'] };
    const merged = mergeEdits(base, { kinds: ['c', 'b', 'a', 'm'] }, { kinds: ['b', 'a', 'c', 't'] });
    expect(merged.document).toEqual({ kinds: ['b', 'a', 'c', 't', 'm'] });
    expect(takeSide(merged.document, merged.open[0] ?? fault(), 'mine')).toEqual({
      kinds: ['c', 'b', 'a', 'm', 't'],
    });
  });
});

const THREE = fc.constantFrom(...SECTION_NAMES).chain((name) => {
  const one = arbitraryOf(sectionSchema(name)) as fc.Arbitrary<JsonObject>;
  return fc.tuple(fc.constant(name), one, one, one);
});
const normal = (document: JsonObject): JsonObject => buildSection(flattenSection(document));

describe('of any section', () => {
  it('a change that stands alone is what comes out, whoever made it', () => {
    fc.assert(
      fc.property(THREE, ([, base, changed]) => {
        expect(findChanges(mergeEdits(base, changed, base).document, normal(changed))).toEqual([]);
        expect(findChanges(mergeEdits(base, base, changed).document, normal(changed))).toEqual([]);
        expect(findChanges(mergeEdits(base, changed, changed).document, normal(changed))).toEqual([]);
      }),
    );
  });

  it('what comes out can be read as the section', () => {
    fc.assert(
      fc.property(THREE, ([name, base, mine, theirs]) => {
        const { document } = mergeEdits(base, mine, theirs);
        expect(readSection(name, document)).toMatchObject({ ok: true });
      }),
    );
  });

  it('nothing that either wrote is lost: it stands, or is named', () => {
    fc.assert(
      fc.property(THREE, ([, base, mine, theirs]) => {
        const { document, bothKept, open } = mergeEdits(base, mine, theirs);
        const stands = flattenSection(document);
        const named = new Set([...bothKept, ...open].map(({ path }) => path));
        for (const side of [mine, theirs]) {
          for (const { path, to } of findChanges(base, side)) {
            if (to === null || named.has(path)) continue;
            const now = stands.get(path) ?? null;
            const kept = Array.isArray(to)
              ? to.every(
                  (one: JsonValue) =>
                    (now as JsonValue[]).some((other) => sameJson(one, other)) || inBase(base, path, one),
                )
              : sameJson(now, to);
            expect(kept, `${path}: ${JSON.stringify(to)} became ${JSON.stringify(now)}`).toBe(true);
          }
        }
      }),
    );
  });
});

/** What the other took out of a list was there before. */
function inBase(base: JsonObject, path: string, one: JsonValue): boolean {
  const before = flattenSection(base).get(path);
  return Array.isArray(before) && before.some((other: JsonValue) => sameJson(one, other));
}

function fault(): never {
  throw new Error('There is a conflict.');
}
