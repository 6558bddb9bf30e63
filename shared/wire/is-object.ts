/** A JSON object: neither null nor a list. `isObject({})` is true, `isObject([])` is false. */
export function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
