import { isJsonObject, type JsonObject, type JsonValue } from '../../../shared/record/json-value.js';

/** An item of a list, which others of its list are told from by its id. */
export type Item = JsonObject & { readonly id: string };

const tokensOf = (path: string): string[] => path.split('/').slice(1);

/**
 * What stands at a path of a document, items by their ids; undefined where nothing does.
 * @example valueAt({ people: [{ id: 'p1', name: 'Ann' }] }, '/people/p1/name') // 'Ann'
 */
export function valueAt(document: JsonObject, path: string): JsonValue | undefined {
  let here: JsonValue | undefined = document;
  for (const token of tokensOf(path)) {
    if (Array.isArray(here)) here = itemsOf(here).find((item) => item.id === token);
    else here = isJsonObject(here) ? here[token] : undefined;
  }
  return here;
}

/** The items of a list; none where there is no list. */
export function itemsAt(document: JsonObject, path: string): readonly Item[] {
  const list = valueAt(document, path);
  return Array.isArray(list) ? itemsOf(list) : [];
}

/**
 * The document with another value at a path; undefined takes it out, and with it a part that holds nothing else.
 * @example withValue({}, '/caller/name', 'Ann') // { caller: { name: 'Ann' } }
 */
export function withValue(document: JsonObject, path: string, value: JsonValue | undefined): JsonObject {
  return (changed(document, tokensOf(path), value) ?? {}) as JsonObject;
}

/** The document with an item put into a list, behind the others or in its place again. */
export function withItem(document: JsonObject, path: string, item: Item, place?: number): JsonObject {
  const items = itemsAt(document, path);
  return withValue(document, path, items.toSpliced(place ?? items.length, 0, item));
}

/** The document without an item, and the place it had, so that it can come back. */
export function withoutItem(document: JsonObject, path: string, id: string) {
  const items = itemsAt(document, path);
  const place = items.findIndex((item) => item.id === id);
  return { document: withValue(document, path, items.toSpliced(place, 1)), item: items[place], place };
}

/** An id that no other phone makes: two people may add somebody at the same time. */
export function newId(list: string): string {
  return `${list.slice(0, 1)}-${crypto.randomUUID().slice(0, 8)}`;
}

/**
 * The path of a field for a pointer into a document, as faults are named.
 * @example pathOfPointer({ people: [{ id: 'p1' }] }, '/people/0/name') // '/people/p1/name'
 */
export function pathOfPointer(document: JsonObject, pointer: string): string {
  let here: JsonValue | undefined = document;
  let path = '';
  for (const token of tokensOf(pointer)) {
    const next: JsonValue | undefined = Array.isArray(here)
      ? (here as readonly JsonValue[])[Number(token)]
      : isJsonObject(here)
        ? here[token]
        : undefined;
    path += `/${Array.isArray(here) && isJsonObject(next) && typeof next['id'] === 'string' ? next['id'] : token}`;
    here = next;
  }
  return path;
}

function itemsOf(list: readonly JsonValue[]): Item[] {
  return list.filter((one): one is Item => isJsonObject(one) && typeof one['id'] === 'string');
}

function changed(
  here: JsonValue | undefined,
  [token, ...rest]: readonly string[],
  value: JsonValue | undefined,
): JsonValue | undefined {
  if (token === undefined) return value;
  if (Array.isArray(here)) {
    return itemsOf(here).map((item) => (item.id === token ? (changed(item, rest, value) ?? item) : item));
  }
  const { [token]: before, ...others } = isJsonObject(here) ? here : {};
  const after = changed(before, rest, value);
  // The order of members is kept while somebody writes in one of them.
  if (after !== undefined) return { ...(isJsonObject(here) ? here : {}), [token]: after };
  return Object.keys(others).length === 0 ? undefined : others;
}
