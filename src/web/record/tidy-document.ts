import { isJsonObject, type JsonObject, type JsonValue } from '../../../shared/record/json-value.js';

/**
 * A section as it is sent: without the empty lines that typing leaves, and without parts in which nothing is said.
 * @example tidyDocument({ tried: ['telephone', ''], caller: { name: ' ' } }) // { tried: ['telephone'] }
 */
export function tidyDocument(document: JsonObject): JsonObject {
  return tidyObject(document);
}

function tidyObject(object: JsonObject): JsonObject {
  return Object.fromEntries(
    Object.entries(object).flatMap(([name, value]): [string, JsonValue][] => {
      const tidied = tidy(value);
      return tidied === undefined ? [] : [[name, tidied]];
    }),
  );
}

function tidy(value: JsonValue): JsonValue | undefined {
  if (typeof value === 'string') return value.trim() === '' ? undefined : value;
  if (Array.isArray(value)) {
    const list = (value as readonly JsonValue[]).flatMap((one) => tidy(one) ?? []);
    return list.every((one) => typeof one === 'string') ? [...new Set(list)] : list;
  }
  if (!isJsonObject(value)) return value;
  const object = tidyObject(value);
  return Object.keys(object).length === 0 || ('known' in object && !('value' in object)) ? undefined : object;
}
