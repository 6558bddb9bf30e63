import type { Fields } from './flatten-section.js';
import { type JsonValue, sameJson } from './json-value.js';

/**
 * The fields of one side with the items back in that it took out while the other side wrote in them, as they were on
 * the base: what somebody wrote does not go because somebody else tidied up.
 * @returns the fields, and the paths of the items that came back
 */
export function reviveItems(
  base: Fields,
  side: Fields,
  other: Fields,
): { fields: Map<string, JsonValue>; revived: string[] } {
  const fields = new Map(side);
  const revived: string[] = [];
  for (const [list, ids] of base) {
    if (!Array.isArray(ids)) continue;
    for (const id of (ids as readonly JsonValue[]).filter((one) => typeof one === 'string')) {
      const item = `${list}/${id}`;
      if (!base.has(`${item}/id`) || fields.has(`${item}/id`) || !wroteIn(base, other, item)) continue;
      for (const [path, value] of base) if (isIn(path, item)) fields.set(path, value);
      const left = (fields.get(list) ?? []) as readonly JsonValue[];
      // Back in its place, others that were added since behind it.
      const known = (ids as readonly JsonValue[]).filter((one) => one === id || left.includes(one));
      fields.set(list, [...known, ...left.filter((one) => !known.includes(one))]);
      revived.push(item);
    }
  }
  return { fields, revived };
}

function wroteIn(base: Fields, other: Fields, item: string): boolean {
  if (!other.has(`${item}/id`)) return false;
  const paths = [...new Set([...base.keys(), ...other.keys()])].filter((path) => isIn(path, item));
  return paths.some((path) => !sameJson(base.get(path) ?? null, other.get(path) ?? null));
}

const isIn = (path: string, item: string): boolean => path.startsWith(`${item}/`);
