/** A value as JSON carries it. */
export type JsonValue = null | boolean | number | string | readonly JsonValue[] | JsonObject;
export interface JsonObject {
  readonly [member: string]: JsonValue;
}

/** Neither null nor a list: `isJsonObject({})` is true, `isJsonObject([])` is false. */
export function isJsonObject(value: unknown): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/**
 * Whether two values are the same, whatever the order of their members.
 * @example sameJson({ a: 1, b: [2] }, { b: [2], a: 1 }) // true
 */
export function sameJson(one: JsonValue, other: JsonValue): boolean {
  if (Array.isArray(one) || Array.isArray(other)) {
    return (
      Array.isArray(one) &&
      Array.isArray(other) &&
      one.length === other.length &&
      one.every((item: JsonValue, index) => sameJson(item, other[index] as JsonValue))
    );
  }
  if (!isJsonObject(one) || !isJsonObject(other)) return one === other;
  const names = Object.keys(one);
  return (
    names.length === Object.keys(other).length &&
    names.every(
      (name) => Object.hasOwn(other, name) && sameJson(one[name] as JsonValue, other[name] as JsonValue),
    )
  );
}
