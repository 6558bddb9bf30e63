import type { SectionName } from '../incident-record.js';
import { type FieldWords, type SectionWords, type UnitName, words as en } from './en.js';
import { words as es } from './es.js';
import type { ValueWords } from './value-words.js';
import { UNITS, VALUE_LISTS, VOCABULARY_FIELDS } from './value-lists.js';

export type FieldLanguage = 'en' | 'es';
/** A section that people write, or what the service itself says of an incident. */
export type WordedSection = SectionName | 'incident';

const WORDS: Readonly<Record<FieldLanguage, FieldWords>> = { en, es };

/** All words of a language, for parts of values: how it is known, how exact, units. */
export const fieldWords = (language: FieldLanguage): FieldWords => WORDS[language];

/** `sectionTitle('check-in', 'es')` is `'Devolución'`; a section of the service's own is called by its name. */
export function sectionTitle(section: string, language: FieldLanguage): string {
  return wordsOf(section, language)?.title ?? section;
}

/** What a section is for, in a sentence. */
export function sectionLead(section: WordedSection, language: FieldLanguage): string {
  return WORDS[language].sections[section].lead;
}

/**
 * What a field is called: of a part, a list, an item of a list or a value. Items stand as their ids or as a star.
 * Undefined for a path that no section has.
 * @example fieldLabel('people', '/people/p1/birthDate', 'en') // 'Date of birth'
 * @example fieldLabel('people', '/people/*', 'es') // 'Persona'
 */
export function fieldLabel(section: string, path: string, language: FieldLanguage): string | undefined {
  const fields = wordsOf(section, language)?.fields;
  if (fields === undefined) return undefined;
  const key = starred(fields, path);
  return fields[key] ?? (key.endsWith('/*/id') ? WORDS[language].id : undefined);
}

/** What helps to answer a field; undefined where its label says enough. */
export function fieldHelp(section: string, path: string, language: FieldLanguage): string | undefined {
  const words = wordsOf(section, language);
  return words?.help[starred(words.fields, path)];
}

/** `fieldUnit('damage', '/lines/d1/labour', 'en')` is `'US dollars'`; undefined where the value carries its unit. */
export function fieldUnit(section: string, path: string, language: FieldLanguage): string | undefined {
  const unit: UnitName | undefined = UNITS[keyOf(section, path)];
  return unit && WORDS[language].units[unit];
}

/**
 * A value that documents carry as a word or a slug, as people say it; any other text stays as it was written.
 * @example valueWord('people', '/people/p1/outcome', 'not-back', 'en') // 'Not back yet'
 * @example valueWord('craft', '/craft/c1/type', 'paddlecraft', 'es') // 'Embarcación de remo o pala'
 */
export function valueWord(
  section: string,
  path: string,
  value: string | boolean,
  language: FieldLanguage,
): string {
  const key = keyOf(section, path);
  const { values, vocabulary } = WORDS[language];
  if (typeof value === 'boolean') return values.yesNo[`${value}`];
  if (VOCABULARY_FIELDS.has(key)) return vocabulary[value] ?? value;
  const list: Readonly<Record<string, string>> = values[valueList(section, path)];
  return list[value] ?? value;
}

/** The closed list from which a field's values come: that of yes, no and unknown where it has none of its own. */
export function valueList(section: string, path: string): keyof ValueWords {
  return VALUE_LISTS[keyOf(section, path)] ?? 'ternary';
}

/** `starredPath('people', '/people/p1/birthDate')` is `'/people/*\/birthDate'`. */
export function starredPath(section: string, path: string): string {
  return starred(en.sections[section as WordedSection]?.fields ?? {}, path);
}

const keyOf = (section: string, path: string): string => `${section}:${starredPath(section, path)}`;

function wordsOf(section: string, language: FieldLanguage): SectionWords | undefined {
  const { sections } = WORDS[language];
  return Object.hasOwn(sections, section) ? sections[section as WordedSection] : undefined;
}

/** What stands below a list is an id; lists are those of which an item has a name. */
function starred(fields: Readonly<Record<string, string>>, path: string): string {
  let key = '';
  for (const token of path.split('/').slice(1)) {
    key += fields[`${key}/*`] === undefined ? `/${token}` : '/*';
  }
  return key;
}
