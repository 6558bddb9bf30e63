import type { Known } from '../../../shared/call/known.js';
import type { IncidentFacts } from '../../../shared/record/incident-facts.js';
import type { FactPlace } from './fact-place.js';

/** A value as it is sent: a word, a number, a list of words, or a range of amounts. */
export type FactValue = string | number | readonly string[] | { readonly low: number; readonly high: number };

type Json = Readonly<Record<string, unknown>>;
type Item = Json & { readonly id: string };

/**
 * The facts with one of them changed, the others as they are.
 * @example withFact(facts, '/people/0/care', 'first-aid').people[0].care // 'first-aid'
 */
export function withFact(facts: IncidentFacts, pointer: string, value: FactValue): IncidentFacts {
  // A place is asked for as its state: the position, where there is one, stays beside it.
  if (pointer === '/place') return { ...facts, place: { ...facts.place, states: value as string[] } };
  return put(facts, pointer.split('/').slice(1), value) as IncidentFacts;
}

function put(into: unknown, [name = '', ...rest]: readonly string[], value: FactValue): unknown {
  const inner = (there: unknown): unknown => (rest.length === 0 ? value : put(there, rest, value));
  if (Array.isArray(into)) {
    return into.map((item: unknown, index) => (String(index) === name ? inner(item) : item));
  }
  const object = into as Json;
  return { ...object, [name]: inner(object[name]) };
}

/** What the facts say at a place; undefined where nobody has said it. */
export function factAt(facts: IncidentFacts, pointer: string): unknown {
  if (pointer === '/place') return facts.place.states;
  return pointer
    .split('/')
    .slice(1)
    .reduce<unknown>((there, name) => (there as Json | undefined)?.[name], facts);
}

/** What the section says there, as it is kept; undefined where it says nothing. */
export function recordedAt(document: Json, { item, member }: FactPlace): unknown {
  return item === undefined ? document[member] : itemsOf(document, item.list).find(isItem(item.id))?.[member];
}

/** The section with that value in its place, to be sent whole. */
export function withRecorded(document: Json, place: FactPlace, value: unknown): Json {
  const { item, member } = place;
  if (item === undefined) return { ...document, [member]: value };
  const items = itemsOf(document, item.list);
  return {
    ...document,
    [item.list]: items.map((one) => (one.id === item.id ? { ...one, [member]: value } : one)),
  };
}

/** The value alone, to be added where nothing stands. */
export function additionOf({ item, member }: FactPlace, value: unknown): Json {
  return item === undefined ? { [member]: value } : { [item.list]: [{ id: item.id, [member]: value }] };
}

/** As the record keeps it: with how it is known, unless the member is kept plain. */
export function asRecorded(
  { plain }: FactPlace,
  value: FactValue,
  known: Known<unknown>['known'],
  by: string,
): unknown {
  return plain === true ? value : { value, known, ...(by.trim() !== '' && { by: by.trim() }) };
}

function itemsOf(document: Json, list: string): readonly Item[] {
  return (document[list] as readonly Item[] | undefined) ?? [];
}

const isItem =
  (id: string) =>
  (item: Item): boolean =>
    item.id === id;
