import { jsonPointer } from '../kernel/json-pointer.js';
import { isJsonObject, type JsonObject, type JsonValue } from './json-value.js';

/** The fields of a section: each path with what stands there. */
export type Fields = ReadonlyMap<string, JsonValue>;

/**
 * A section taken apart into its fields, the smallest things that are amended, committed to and withdrawn. A path is
 * an RFC 6901 pointer, but that an item of a list is named by its id, so that it stays the same when others come and
 * go; the list itself is a field that holds the ids in their order. A fact with its provenance is one field, and so
 * is a time with the way it was taken.
 * @example
 * flattenSection({ people: [{ id: 'p1', name: 'Ann' }] })
 * // Map { '/people' => ['p1'], '/people/p1/id' => 'p1', '/people/p1/name' => 'Ann' }
 */
export function flattenSection(document: JsonObject): Map<string, JsonValue> {
  const fields = new Map<string, JsonValue>();
  addMembers(document, [], fields);
  return fields;
}

type Path = readonly string[];

function addMembers(object: JsonObject, path: Path, fields: Map<string, JsonValue>): void {
  for (const [name, value] of Object.entries(object)) addField(value, [...path, name], fields);
}

function addField(value: JsonValue, path: Path, fields: Map<string, JsonValue>): void {
  if (isItemList(value)) {
    const ids = value.map(({ id }) => id);
    fields.set(jsonPointer(path), ids);
    for (const item of value) addMembers(item, [...path, item.id], fields);
  } else if (isJsonObject(value) && !isWhole(value)) {
    addMembers(value, path, fields);
  } else {
    fields.set(jsonPointer(path), value);
  }
}

type Item = JsonObject & { readonly id: string };

function isItemList(value: JsonValue): value is readonly Item[] {
  return (
    Array.isArray(value) &&
    value.length > 0 &&
    value.every((item: JsonValue) => isJsonObject(item) && typeof item['id'] === 'string')
  );
}

/** A fact with its provenance, or a time with the way it was taken. */
function isWhole(value: JsonObject): boolean {
  return ('value' in value && 'known' in value) || ('at' in value && 'how' in value);
}
