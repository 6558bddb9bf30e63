import type { JsonObject, JsonValue } from '../../../shared/record/json-value.js';

/**
 * What has to be added to a section that was sent so that it says what it shall say now; null where something that was
 * sent has changed or gone, as an addition alters nothing. Lists are of items with ids, or of plain texts.
 * @example additionOf({ a: 1 }, { a: 1, b: 2 }) // { b: 2 }
 * @example additionOf({ a: 1 }, { a: 2 }) // null
 */
export function additionOf(sent: JsonObject, now: JsonObject): JsonObject | null {
  if (Object.keys(sent).some((name) => !(name in now))) return null;
  const added: Record<string, JsonValue> = {};
  for (const [name, value] of Object.entries(now)) {
    const before = sent[name];
    if (same(before, value)) continue;
    const more = before === undefined ? value : addedTo(before, value);
    if (more === null) return null;
    added[name] = more;
  }
  return added;
}

function addedTo(before: JsonValue, now: JsonValue): JsonValue | null {
  if (Array.isArray(before) && Array.isArray(now)) return addedItems(before, now);
  return isFact(before) || !isPlainObject(before) || !isPlainObject(now) ? null : additionOf(before, now);
}

function addedItems(before: readonly JsonValue[], now: readonly JsonValue[]): JsonValue | null {
  const added: JsonValue[] = [];
  for (const item of now) {
    if (before.some((one) => same(one, item))) continue;
    const id = idOf(item);
    const earlier = before.find((one) => id !== undefined && idOf(one) === id);
    if (earlier === undefined) {
      added.push(item);
      continue;
    }
    const more = addedTo(earlier, item);
    if (!isPlainObject(more)) return null;
    added.push({ id: id as JsonValue, ...more });
  }
  const gone = before.some((one) => !now.some((item) => same(one, item) || (idOf(one) ?? 0) === idOf(item)));
  return gone ? null : added;
}

/** A fact with how it is known is changed as one. */
const isFact = (value: JsonValue): boolean => isPlainObject(value) && 'known' in value && 'value' in value;

function isPlainObject(value: JsonValue | null | undefined): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

const idOf = (value: JsonValue): JsonValue | undefined => (isPlainObject(value) ? value['id'] : undefined);

const same = (one: JsonValue | undefined, other: JsonValue | undefined): boolean =>
  JSON.stringify(one) === JSON.stringify(other);
