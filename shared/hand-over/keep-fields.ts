import { jsonPointer } from '../kernel/json-pointer.js';
import { isJsonObject, type JsonObject, type JsonValue } from '../record/json-value.js';

/**
 * The document with these fields alone, each with the value it is given here, in the order it had. Items of a list of
 * which nothing is kept are left out.
 * @param kept by the paths of `flattenSection`
 * @example keepFields({ people: [{ id: 'p1', name: 'Ann' }] }, new Map([['/people/p1/id', 'p1']])) // { people: [{ id: 'p1' }] }
 */
export function keepFields(document: JsonObject, kept: ReadonlyMap<string, JsonValue>): JsonObject {
  return keepMembers(document, [], kept) ?? {};
}

function keepMembers(
  object: JsonObject,
  path: readonly string[],
  kept: ReadonlyMap<string, JsonValue>,
): JsonObject | undefined {
  const members = Object.entries(object).flatMap(([name, value]) => {
    const left = keepValue(value, [...path, name], kept);
    return left === undefined ? [] : [[name, left] as const];
  });
  return members.length === 0 ? undefined : Object.fromEntries(members);
}

function keepValue(
  value: JsonValue,
  path: readonly string[],
  kept: ReadonlyMap<string, JsonValue>,
): JsonValue | undefined {
  if (isItemList(value)) {
    const items = value.flatMap((item) => keepMembers(item, [...path, item.id], kept) ?? []);
    return items.length === 0 ? undefined : items;
  }
  const own = kept.get(jsonPointer(path));
  if (own !== undefined || !isJsonObject(value)) return own;
  return keepMembers(value, path, kept);
}

type Item = JsonObject & { readonly id: string };

function isItemList(value: JsonValue): value is readonly Item[] {
  return Array.isArray(value) && value.length > 0 && value.every(hasId);
}

function hasId(item: JsonValue): item is Item {
  return isJsonObject(item) && typeof item['id'] === 'string';
}
