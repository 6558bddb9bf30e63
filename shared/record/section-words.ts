import { flattenSection } from './flatten-section.js';
import { isJsonObject, type JsonObject, type JsonValue } from './json-value.js';

/**
 * A text as it is searched: lower case, without accents, white space narrowed.
 * @example searchable('  Señora  Café ') // 'senora cafe'
 */
export function searchable(text: string): string {
  return text
    .normalize('NFKD')
    .replaceAll(/\p{M}+/gu, '')
    .toLowerCase()
    .replaceAll(/\s+/g, ' ')
    .trim();
}

/** What a section is found by: all its words, without the names of members, the ids of items and the times. */
export function sectionWords(document: JsonObject): string {
  const words = [...flattenSection(document)].flatMap(([path, value]) =>
    /(^|\/)(id|craft|person|at|startedAt|endedAt|timeZone)$/.test(path) ? [] : wordsIn(value),
  );
  return searchable(words.join(' \n '));
}

function wordsIn(value: JsonValue): string[] {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) return value.flatMap(wordsIn);
  if (!isJsonObject(value) || 'how' in value) return [];
  return 'known' in value
    ? [...wordsIn(value['value'] ?? null), ...wordsIn(value['by'] ?? null)]
    : Object.values(value).flatMap(wordsIn);
}
