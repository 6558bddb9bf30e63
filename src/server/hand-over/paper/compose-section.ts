import type { Withheld } from '../../../../shared/hand-over/packet.js';
import {
  fieldLabel,
  fieldUnit,
  fieldWords,
  starredPath,
  type WordedSection,
} from '../../../../shared/record/field-words/tell-field.js';
import { isJsonObject, type JsonObject, type JsonValue } from '../../../../shared/record/json-value.js';
import type { Block, PaperRow } from './blocks.js';
import type { Names } from './name-things.js';
import { isKnown, isStamp, tellFact } from './tell-fact.js';

/** What composing a section needs beside it. */
export interface Composing {
  readonly names: Names;
  readonly timeZone: string;
  readonly masked: ReadonlyMap<string, Withheld['masked'][number]['how']>;
}

/** `maskedOf(withheld).get('people:/people/p1/birthDate')` is `'year'`. */
export function maskedOf({ masked }: Withheld): Composing['masked'] {
  return new Map(masked.map(({ section, path, how }) => [`${section}:${path}`, how]));
}

/** Ids that tell a reader nothing. */
const UNTOLD = new Set(['id', 'fleetCraft']);

/**
 * A section as it leaves, whole: plain fields first, then each item of its lists under its own heading, in the order of
 * the section and not in that in which somebody happened to write.
 */
export function composeSection(section: string, document: JsonObject, composing: Composing): Block[] {
  const rows: PaperRow[] = [];
  const blocks: Block[] = [];
  for (const [member, value] of inOrder(section, '', document)) {
    if (!isItemList(value)) rows.push(...rowsOf(section, `/${member}`, value, composing));
    else value.forEach((item, place) => blocks.push(...composeItem(section, member, item, place, composing)));
  }
  return [...(rows.length > 0 ? [{ kind: 'rows', rows } as const] : []), ...blocks];
}

function composeItem(
  section: string,
  list: string,
  item: Item,
  place: number,
  composing: Composing,
): Block[] {
  const under = `/${list}/${item.id}`;
  const rows = inOrder(section, under, item).flatMap(([member, value]) =>
    rowsOf(section, `${under}/${member}`, value, composing),
  );
  if (rows.length === 0) return [];
  const title = titleOf(section, list, item, place, composing.names);
  return [
    { kind: 'heading', title },
    { kind: 'rows', rows, of: title },
  ];
}

/** `'Person 1: Ann Lee'`; without a name the number alone. */
function titleOf(section: string, list: string, item: Item, place: number, names: Names): string {
  const word = fieldLabel(section, `/${list}/*`, 'en') ?? list;
  const person = typeof item['person'] === 'string' ? names.people.get(item['person']) : undefined;
  const name = ['name', 'who', 'what'].map((member) => item[member]).find((one) => typeof one === 'string');
  const called = name ?? person;
  return called === undefined ? `${word} ${place + 1}` : `${word} ${place + 1}: ${called}`;
}

function rowsOf(
  section: string,
  path: string,
  value: JsonValue,
  composing: Composing,
  under?: string,
): PaperRow[] {
  if (UNTOLD.has(path.slice(path.lastIndexOf('/') + 1))) return [];
  const label = fieldLabel(section, path, 'en') ?? path;
  const within = (part: string): string => (under === undefined ? part : `${under}, ${part.toLowerCase()}`);
  if (isItemList(value)) {
    return value.flatMap((item, place) => {
      const word = `${fieldLabel(section, `${path}/*`, 'en') ?? label} ${place + 1}`;
      return membersOf(section, `${path}/${item.id}`, item, composing, within(word));
    });
  }
  if (isJsonObject(value) && hasFields(section, path) && !isKnown(value) && !isStamp(value)) {
    return membersOf(section, path, value, composing, within(label));
  }
  const masked = composing.masked.get(`${section}:${path}`);
  const told = tellFact({ ...composing, section, path, value, masked });
  return [
    {
      label,
      ...told,
      field: { path, value, unit: fieldUnit(section, path, 'en') },
      ...(under === undefined ? {} : { under }),
    },
  ];
}

function membersOf(
  section: string,
  path: string,
  object: JsonObject,
  composing: Composing,
  under: string,
): PaperRow[] {
  return inOrder(section, path, object).flatMap(([member, value]) =>
    rowsOf(section, `${path}/${member}`, value, composing, under),
  );
}

/** Whether something stands below a path, so that it is a part and no value. */
function hasFields(section: string, path: string): boolean {
  const key = `${starredPath(section, path)}/`;
  return orderOf(section).some((field) => field.startsWith(key));
}

function inOrder(section: string, under: string, object: JsonObject): [string, JsonValue][] {
  const order = orderOf(section);
  const placeOf = (member: string): number => {
    const place = order.indexOf(starredPath(section, `${under}/${member}`));
    return place === -1 ? order.length : place;
  };
  return Object.entries(object).sort(([one], [other]) => placeOf(one) - placeOf(other));
}

function orderOf(section: string): string[] {
  return Object.keys(fieldWords('en').sections[section as WordedSection].fields);
}

type Item = JsonObject & { readonly id: string };

function isItemList(value: JsonValue): value is readonly Item[] {
  return (
    Array.isArray(value) &&
    value.length > 0 &&
    value.every((item: JsonValue) => isJsonObject(item) && typeof item['id'] === 'string')
  );
}
