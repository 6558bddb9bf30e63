import { flattenSection, type Fields } from './flatten-section.js';
import { sameJson, type JsonObject, type JsonValue } from './json-value.js';

/** One field that differs; null where there was nothing, or where there is nothing any more. */
export interface FieldEdit {
  readonly path: string;
  readonly from: JsonValue;
  readonly to: JsonValue;
}

/**
 * What changed between two states of a section, in the order of the paths; none when they say the same.
 * @example
 * findChanges({ said: 'help' }, { said: 'help', takenBy: 'Ann' })
 * // [{ path: '/takenBy', from: null, to: 'Ann' }]
 */
export function findChanges(before: JsonObject, after: JsonObject): FieldEdit[] {
  const [old, now] = [flattenSection(before), flattenSection(after)];
  return [...new Set([...old.keys(), ...now.keys()])]
    .sort()
    .map((path) => ({ path, from: at(old, path), to: at(now, path) }))
    .filter(({ from, to }) => !sameJson(from, to));
}

function at(fields: Fields, path: string): JsonValue {
  return fields.get(path) ?? null;
}
