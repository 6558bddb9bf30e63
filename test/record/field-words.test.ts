import { describe, expect, it } from 'vitest';
import { words as en } from '../../shared/record/field-words/en.js';
import { words as es } from '../../shared/record/field-words/es.js';
import {
  fieldHelp,
  fieldLabel,
  fieldUnit,
  sectionTitle,
  starredPath,
  valueWord,
  valueList,
  type FieldLanguage,
} from '../../shared/record/field-words/tell-field.js';
import { UNITS, VALUE_LISTS, VOCABULARY_FIELDS } from '../../shared/record/field-words/value-lists.js';
import { membersOf, type Shape } from '../../shared/wire/record-members.js';
import { SECTION_SHAPES } from '../../shared/wire/record-sections.js';
import { casualtyTypeSlugs } from '../../shared/vocabulary/casualty-types.js';
import { treatmentSlugs } from '../../shared/vocabulary/treatments.js';
import { vesselTypes } from '../../shared/vocabulary/vessel-types.js';

const LANGUAGES: readonly FieldLanguage[] = ['en', 'es'];

interface Walked {
  section: string;
  path: string;
  /** The words that its values may be; empty for text and figures. */
  allowed: readonly unknown[];
  schema: Readonly<Record<string, unknown>>;
}

/** Every list, item, part and value that a section can hold. */
function walk(section: string, shape: Shape, under: string): Walked[] {
  return [...membersOf(shape)].flatMap(([name, member]) => {
    const path = `${under}/${name}`;
    const here = { section, path, allowed: [], schema: {} };
    if ('rule' in member) {
      const { schema } = member.rule;
      return [{ section, path, allowed: wordsOf(schema), schema }];
    }
    if (member.kind === 'part') return [here, ...walk(section, member.shape(), path)];
    return [here, { ...here, path: `${path}/*` }, ...walk(section, member.shape(), `${path}/*`)];
  });
}

function wordsOf(schema: Readonly<Record<string, unknown>>): readonly unknown[] {
  const own = schema['enum'] ?? (schema['items'] as { enum?: unknown } | undefined)?.enum ?? [];
  return own as readonly unknown[];
}

const FIELDS = Object.entries(SECTION_SHAPES).flatMap(([section, shape]) => walk(section, shape, ''));

describe.each(LANGUAGES)('the words of the record (%s)', (language) => {
  it('name every section, list, item, part and field there is', () => {
    expect(FIELDS.length).toBeGreaterThan(400);
    const nameless = FIELDS.filter(({ section, path }) => !fieldLabel(section, path, language)?.trim());
    expect(nameless.map(({ section, path }) => `${section}:${path}`)).toEqual([]);
    for (const section of Object.keys(SECTION_SHAPES))
      expect(sectionTitle(section, language)).not.toBe(section);
  });

  it('have one for every value that a field may have', () => {
    const closed = FIELDS.filter(({ allowed }) => allowed.length > 0);
    expect(closed.length).toBeGreaterThan(60);
    const words = language === 'en' ? en : es;
    const wordless = closed.flatMap(({ section, path, allowed }) =>
      allowed
        .map(String)
        .filter((value) => {
          const list: Readonly<Record<string, string>> = VOCABULARY_FIELDS.has(`${section}:${path}`)
            ? words.vocabulary
            : words.values[valueList(section, path)];
          return list[value] === undefined;
        })
        .map((value) => `${section}:${path} ${value}`),
    );
    expect(wordless).toEqual([]);
  });

  it('know the vocabulary', () => {
    const slugs = [...casualtyTypeSlugs, ...treatmentSlugs, ...vesselTypes.map(({ slug }) => slug)];
    const { vocabulary } = language === 'en' ? en : es;
    expect(slugs.filter((slug) => vocabulary[slug] === undefined)).toEqual([]);
  });

  it('give every figure its unit', () => {
    const figures = FIELDS.filter(({ schema }) => /"(number|integer)"/.test(JSON.stringify(schema)));
    expect(figures.length).toBeGreaterThan(15);
    expect(figures.filter(({ section, path }) => !fieldUnit(section, path, language))).toEqual([]);
  });
});

describe('the words of the record', () => {
  const known = new Set(FIELDS.map(({ section, path }) => `${section}:${path}`));
  const own = (keys: readonly string[]) => keys.filter((key) => !key.startsWith('incident:'));

  it('name nothing that is not there', () => {
    const named = Object.entries(en.sections).flatMap(([section, { fields, help }]) =>
      [...Object.keys(fields), ...Object.keys(help)].map((path) => `${section}:${path}`),
    );
    expect(own(named).filter((field) => !known.has(field))).toEqual([]);
    const listed = [...Object.keys(VALUE_LISTS), ...Object.keys(UNITS), ...VOCABULARY_FIELDS];
    expect(own(listed).filter((field) => !known.has(field))).toEqual([]);
  });

  it('differ from language to language', () => {
    const same = FIELDS.filter(
      ({ section, path }) => fieldLabel(section, path, 'en') === fieldLabel(section, path, 'es'),
    ).map(({ section, path }) => `${section}:${path}`);
    // A word that both languages share.
    expect(same).toEqual(['emergency-response:/responders/*/hospital', 'people:/people/*/hospital']);
  });

  it.each([
    ['people', '/people/p1/minor/guardian', '/people/*/minor/guardian'],
    ['people', '/people/*/birthDate', '/people/*/birthDate'],
    ['people', '/people/people/injuries/age/extent', '/people/*/injuries/*/extent'],
    ['call', '/said', '/said'],
    ['luck', '/a/b', '/a/b'],
  ])('%s %s is %s', (section, path, starred) => {
    expect(starredPath(section, path)).toBe(starred);
  });

  it('say what a path, a value and a unit are called', () => {
    expect(fieldLabel('people', '/people/p1', 'en')).toBe('Person');
    expect(fieldLabel('people', '/people/p1/id', 'en')).toBe('Mark in the list');
    expect(fieldLabel('people', '/people/p1/luck', 'en')).toBeUndefined();
    expect(fieldLabel('holds', '/holds/h1', 'en')).toBeUndefined();
    expect(sectionTitle('holds', 'en')).toBe('holds');
    expect(fieldHelp('call', '/said', 'es')).toContain('Palabra por palabra');
    expect(fieldHelp('call', '/takenBy', 'es')).toBeUndefined();
    expect(valueWord('people', '/people/p1/outcome', 'not-back', 'en')).toBe('Not back yet');
    expect(valueWord('people', '/people/p1/inpatient', 'unknown', 'es')).toBe('Aún no se sabe');
    expect(valueWord('craft', '/craft/c1/ours', true, 'es')).toBe('Sí');
    expect(valueWord('craft', '/craft/c1/type', 'a big one', 'en')).toBe('a big one');
    expect(valueWord('account', '/casualtyTypes', 'grounding', 'en')).toBe('Grounding');
    expect(fieldUnit('damage', '/lines/d1/labour', 'es')).toBe('dólares de EE. UU.');
  });
});
