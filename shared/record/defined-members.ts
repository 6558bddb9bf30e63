/**
 * An object without the members that are undefined: an absent fact is unknown, and is left out.
 * @example definedMembers<{ a?: number; b?: string }>({ a: 1, b: undefined }) // { a: 1 }
 */
export function definedMembers<T extends object>(members: { [M in keyof T]: T[M] | undefined }): T {
  return Object.fromEntries(Object.entries(members).filter(([, value]) => value !== undefined)) as T;
}
