import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import factsSchema from '../../forms/determination/incident-facts.schema.json' with { type: 'json' };
import { readIncidentFacts } from '../../shared/wire/read-incident-facts.js';
import { factDocuments, refusals } from './fact-fixtures.js';
import { schemaPointers } from './schema-pointers.js';

const good = factDocuments('good');
const bad = factDocuments('bad').map(([name, document]) => ({ name, document, refusal: refusals[name] }));

function readerPointers(input: unknown): string[] {
  const reading = readIncidentFacts(input);
  return reading.ok ? [] : reading.errors.map((error) => error.pointer);
}

describe('the schema validator and the classes over the same documents', () => {
  it.each(good)('both accept %s', (_, document) => {
    expect([...schemaPointers(document)]).toEqual([]);
    expect(readIncidentFacts(document)).toEqual({ ok: true, facts: document });
  });

  it.each(bad.filter(({ refusal }) => refusal?.refusedBy === 'schema'))(
    'both refuse $name at the same pointers',
    ({ document, refusal }) => {
      expect([...schemaPointers(document)].sort()).toEqual([...(refusal?.pointers ?? [])].sort());
      expect(readerPointers(document)).toEqual(refusal?.pointers);
    },
  );

  it.each(bad.filter(({ refusal }) => refusal?.refusedBy === 'both'))(
    'the classes add to what the schema finds in $name',
    ({ document, refusal }) => {
      const found = [...schemaPointers(document)];
      expect(found.length).toBeGreaterThan(0);
      expect(refusal?.pointers).toEqual(expect.arrayContaining(found));
      expect(readerPointers(document)).toEqual(refusal?.pointers);
    },
  );

  it('every bad document has its expectation, and every expectation its document', () => {
    expect(bad.map(({ name }) => name).sort()).toEqual(Object.keys(refusals).sort());
  });
});

describe('what no schema says: the schema accepts and the classes refuse', () => {
  it.each(bad.filter(({ refusal }) => refusal?.refusedBy === 'classes'))('$name', ({ document, refusal }) => {
    expect([...schemaPointers(document)]).toEqual([]);
    expect(readerPointers(document)).toEqual(refusal?.pointers);
  });
});

/** Where the classes may find more than the schema: relations between members, terms, zones, cents. */
const BEYOND_THE_SCHEMA = new RegExp(
  '^/(?:(?:vessels|people|damage)/\\d+/id|(?:people|damage)/\\d+/vessel|place/(?:latitude|longitude|timeZone)' +
    '|place/states/\\d+|vessels/\\d+/stateOfNumber|casualtyTypes/\\d+|people/\\d+/(?:treatments/\\d+|diedAt)' +
    '|damage/\\d+/amount(?:/low|/high)?|occurredUntil)$',
);

type Path = (string | number)[];

interface Change {
  readonly how: 'drop' | 'set' | 'add';
  readonly value: unknown;
  /** Of the member added. */
  readonly name: string;
}

const enumWords = [...JSON.stringify(factsSchema).matchAll(/"enum":(\[[^\]]*\])/g)].flatMap(
  ([, words]) => JSON.parse(words ?? '[]') as string[],
);

const oddValues: readonly unknown[] = [
  ...new Set(enumWords),
  ...[null, true, false, '', 'x', 'TX', 'tx', 'XX', 'pwc-7', 'America/Chicago', 'grounding', 'massage'],
  ...[[], {}, [null], [{}], ['TX', 'TX'], ['grounding'], { id: 'a' }, { low: 1, high: 2 }, { low: 2 }],
  ...[0, -0, 1, -1, 1.5, 2, 90, -90, 90.000001, 180, -180, 180.000001, -0.01, 1e9, 1e21, Infinity],
  ...['2026-07-04T15:40:00Z', '2026-02-30T00:00:00Z', '2026-07-04T15:40:00', '2026-07-04'],
];
const oddNames = ['__proto__', 'constructor', 'toString', 'a/b', '~', '', 'id', 'care'];

/** Paths of all members and items of a document, the document itself first. */
function pathsOf(node: unknown, path: Path = []): Path[] {
  if (typeof node !== 'object' || node === null) return [path];
  const inside = Array.isArray(node) ? [...node.entries()] : Object.entries(node);
  return [path, ...inside.flatMap(([key, value]) => pathsOf(value, [...path, key]))];
}

/** The document with one member or item dropped or replaced, or a member added to one of its objects. */
function changed(node: unknown, path: Path, change: Change): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return change.how === 'add' ? withMember(node, change) : change.value;
  const keep = (at: string | number, value: unknown): unknown[] => {
    if (at !== key) return [value];
    return rest.length === 0 && change.how === 'drop' ? [] : [changed(value, rest, change)];
  };
  if (Array.isArray(node)) return node.flatMap((item: unknown, index) => keep(index, item));
  const members = Object.entries(node as object).flatMap(([name, value]: [string, unknown]) =>
    keep(name, value).map((one): [string, unknown] => [name, one]),
  );
  return Object.fromEntries(members);
}

function withMember(node: unknown, { name, value }: Change): unknown {
  if (typeof node !== 'object' || node === null || Array.isArray(node)) return value;
  return Object.fromEntries([...Object.entries(node), [name, value]]);
}

/** Null when both validators judge alike; else what one of them says alone. */
function disagreement(document: unknown): string | null {
  const bySchema = schemaPointers(document);
  const byClasses = new Set(readerPointers(document));
  const missed = [...bySchema].filter((pointer) => !byClasses.has(pointer));
  const invented = [...byClasses].filter((one) => !bySchema.has(one) && !BEYOND_THE_SCHEMA.test(one));
  if (missed.length + invented.length === 0) return null;
  return `missed ${missed.join(' ')}, invented ${invented.join(' ')} in ${JSON.stringify(document)}`;
}

describe('changed documents are judged alike, fault by fault', () => {
  const [, full] = good.find(([name]) => name === 'every-member-given') ?? [];
  const paths = pathsOf(full);
  const changes: Change[] = [
    { how: 'drop', value: null, name: '' },
    ...oddValues.map((value): Change => ({ how: 'set', value, name: '' })),
    ...oddNames.map((name): Change => ({ how: 'add', value: 1, name })),
  ];

  it('the document that the changes start from has every member of the schema', () => {
    const named = [
      ...JSON.stringify(factsSchema).matchAll(/"(\w+)":\{"(?:description|type|enum|oneOf|const|\$ref)"/g),
    ];
    const members = new Set(
      named.map(([, name]) => name).filter((name) => name !== 'items' && name !== 'ternary'),
    );
    const given = new Set(paths.flat());
    expect([...members].filter((name) => name !== undefined && !given.has(name))).toEqual([]);
    expect(members.size).toBeGreaterThan(50);
  });

  it.each(paths.map((path) => [path.join('/'), path] as const))('every change at /%s', (_, path) => {
    const found = changes.map((change) => disagreement(changed(full, path, change)));
    expect(found.filter((one) => one !== null)).toEqual([]);
  });

  it('several changes at once, on every good document', () => {
    const change = fc.record({
      at: fc.nat(),
      how: fc.constantFrom<Change['how']>('drop', 'set', 'add'),
      value: fc.oneof(fc.constantFrom(...oddValues), fc.jsonValue({ maxDepth: 2 })),
      name: fc.oneof(fc.constantFrom(...oddNames), fc.string()),
    });
    const documents = fc.constantFrom(...good.map(([, document]) => document));
    fc.assert(
      fc.property(documents, fc.array(change, { minLength: 2, maxLength: 5 }), (start, list) => {
        const document = list.reduce<unknown>((now, { at, ...one }) => {
          const places = pathsOf(now);
          return changed(now, places[at % places.length] ?? [], one);
        }, start);
        expect(disagreement(document)).toBeNull();
      }),
      { numRuns: 1500 },
    );
  });
});
