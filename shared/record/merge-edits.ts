import { buildSection } from './build-section.js';
import { type Fields, flattenSection } from './flatten-section.js';
import { isJsonObject, type JsonObject, type JsonValue, sameJson } from './json-value.js';
import { reviveItems } from './revive-items.js';

/** A field in which both changed the same thing, each another way. Null where one of them took it out. */
export interface EditConflict {
  readonly path: string;
  readonly base: JsonValue;
  readonly mine: JsonValue;
  readonly theirs: JsonValue;
}

export interface MergedEdits {
  /** What both did, put together. Where only one can stand, what is on record does. */
  readonly document: JsonObject;
  /** Texts that both wrote: theirs, then mine, in one field. */
  readonly bothKept: readonly EditConflict[];
  /** Where only one can stand: a person chooses. */
  readonly open: readonly EditConflict[];
  /** Paths of items that one took out while the other wrote in them: they stay. */
  readonly revived: readonly string[];
}

/**
 * Puts two changes of one section together, field by field, items of lists by their ids. What one of them changed and
 * the other left is as that one wrote it; of a text that both changed both words are kept.
 * @param base the section on which both were made
 * @example
 * mergeEdits({ water: 'calm' }, { water: 'calm', light: 'dusk' }, { water: 'choppy' }).document
 * // { water: 'choppy', light: 'dusk' }
 */
export function mergeEdits(base: JsonObject, mine: JsonObject, theirs: JsonObject): MergedEdits {
  const old = flattenSection(base);
  const given = [flattenSection(mine), flattenSection(theirs)] as const;
  const ours = reviveItems(old, given[0], given[1]);
  const others = reviveItems(old, given[1], given[0]);
  const fields = new Map<string, JsonValue>();
  const bothKept: EditConflict[] = [];
  const open: EditConflict[] = [];
  // Theirs first: the order of what stands is that of the record.
  for (const path of new Set([...others.fields.keys(), ...ours.fields.keys()])) {
    const sides = { path, base: at(old, path), mine: at(ours.fields, path), theirs: at(others.fields, path) };
    const { value, how } = mergeField(sides);
    if (how === 'both') bothKept.push(sides);
    if (how === 'open') open.push(sides);
    if (value !== null) fields.set(path, value);
  }
  const revived = [...ours.revived, ...others.revived];
  return { document: buildSection(fields), bothKept, open, revived };
}

/**
 * A merged section with one of the two answers in a field; of a list, in one of the two orders, with all that is in it.
 * @example takeSide({ water: 'calm' }, { path: '/water', base: null, mine: 'rough', theirs: 'calm' }, 'mine') // { water: 'rough' }
 */
export function takeSide(document: JsonObject, conflict: EditConflict, side: 'mine' | 'theirs'): JsonObject {
  const fields = flattenSection(document);
  const value = conflict[side];
  const there = at(fields, conflict.path);
  if (value === null) fields.delete(conflict.path);
  else if (isTexts(value) && isTexts(there)) fields.set(conflict.path, inOrderOf(value, there));
  else fields.set(conflict.path, value);
  return buildSection(fields);
}

type Merging = { readonly value: JsonValue; readonly how: 'plain' | 'both' | 'open' };
const plain = (value: JsonValue): Merging => ({ value, how: 'plain' });

function mergeField({ base, mine, theirs }: EditConflict): Merging {
  if (sameJson(mine, theirs) || sameJson(mine, base)) return plain(theirs);
  if (sameJson(theirs, base)) return plain(mine);
  // One took out what the other changed: what was written is not lost.
  if (mine === null || theirs === null) return { value: mine ?? theirs, how: 'open' };
  if (isTexts(mine) && isTexts(theirs)) return mergeLists(isTexts(base) ? base : [], mine, theirs);
  const [said, saidThere] = [wordsOf(mine), wordsOf(theirs)];
  if (said === undefined || saidThere === undefined) return { value: theirs, how: 'open' };
  return { value: withWords(theirs, joinWords(wordsOf(base) ?? '', said, saidThere), mine), how: 'both' };
}

/** Without what either took out, with what either added; in the order of the one who moved something. */
function mergeLists(base: readonly string[], mine: readonly string[], theirs: readonly string[]): Merging {
  const stays = (one: string): boolean => !base.includes(one) || (mine.includes(one) && theirs.includes(one));
  const moved = [mine, theirs].map((list) => {
    const kept = base.filter((one) => list.includes(one));
    return !sameJson(
      list.filter((one) => base.includes(one)),
      kept,
    );
  });
  const [first, second] = moved[0] === true && moved[1] === false ? [mine, theirs] : [theirs, mine];
  const value = inOrderOf(first, [...new Set([...first, ...second])].filter(stays));
  return { value, how: moved.every(Boolean) && !sameJson(mine, theirs) ? 'open' : 'plain' };
}

function inOrderOf(order: readonly string[], list: readonly string[]): string[] {
  return [...order.filter((one) => list.includes(one)), ...list.filter((one) => !order.includes(one))];
}

/** Whoever only wrote on behind a whole sentence has both; otherwise one stands under the other. */
function joinWords(base: string, mine: string, theirs: string): string {
  if (theirs.includes(mine)) return theirs;
  if (mine.includes(theirs)) return mine;
  const wroteOn = /[.!?\n]\s*$/.test(base) && mine.startsWith(base);
  return `${theirs}\n${wroteOn ? mine.slice(base.length).trim() : mine}`;
}

const at = (fields: Fields, path: string): JsonValue => fields.get(path) ?? null;

function isTexts(value: JsonValue): value is readonly string[] {
  return Array.isArray(value) && value.every((one) => typeof one === 'string');
}

/** Two slugs, ids, figures, days or instants in one field would be neither. */
const CODED = /^(?:[\w-]*|\d{4}-\d\d-\d\d(?:T\S+)?|[A-Z][A-Za-z]+\/\S+)$/;

/** The words of a text, or of a fact that is told in words. */
function wordsOf(value: JsonValue): string | undefined {
  const text = isJsonObject(value) ? value['value'] : value;
  return typeof text === 'string' && !CODED.test(text) ? text : undefined;
}

/** Both words in one fact, with the names of both; known otherwise by each, it is told, and each says how. */
function withWords(theirs: JsonValue, text: string, mine: JsonValue): JsonValue {
  if (!isJsonObject(theirs) || !isJsonObject(mine)) return text;
  const alike = theirs['known'] === mine['known'];
  const sources = [theirs, mine].flatMap(({ by, known }) => {
    const name = typeof by === 'string' ? by : '';
    const source = alike || typeof known !== 'string' ? name : `${name} (${known})`.trim();
    return source === '' ? [] : [source];
  });
  const by = [...new Set(sources)].join('; ');
  return { value: text, known: alike ? (theirs['known'] ?? 'told') : 'told', ...(by !== '' && { by }) };
}
