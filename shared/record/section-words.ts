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
  const fields = flattenSection(document);
  const words = [...fields].flatMap(([path, value]) => {
    const listsItems = Array.isArray(value) && fields.has(`${path}/${String(value[0])}/id`);
    return listsItems || UNSAID.test(path) ? [] : wordsIn(value);
  });
  return searchable(words.join(' \n '));
}

/** Ids of items elsewhere, and times: nobody looks for these by words. */
const UNSAID =
  /\/(id|craft|person|at|\w+At|promisedBy|extendedUntil|timeZone|renterPerson|officer|line|damageLine|patients|briefed)$/;

function wordsIn(value: JsonValue): string[] {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) return value.flatMap(wordsIn);
  if (!isJsonObject(value) || 'how' in value) return [];
  return 'known' in value
    ? [...wordsIn(value['value'] ?? null), ...wordsIn(value['by'] ?? null)]
    : Object.values(value).flatMap(wordsIn);
}
