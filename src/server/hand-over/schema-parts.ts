export type Schema = Record<string, unknown>;

export const text: Schema = { type: 'string' };
export const instant: Schema = { type: 'string', format: 'date-time' };
export const count: Schema = { type: 'integer', minimum: 0 };
export const hash: Schema = { type: 'string', pattern: '^[0-9a-f]{64}$' };

/** An object whose members are all there, but for the optional ones. */
export const object = (
  properties: Record<string, Schema>,
  optional: Record<string, Schema> = {},
): Schema => ({
  type: 'object',
  required: Object.keys(properties),
  properties: { ...properties, ...optional },
});
export const listOf = (items: Schema): Schema => ({ type: 'array', items });

export const SIGNED_BY = object({ account: text, person: text, role: text });
