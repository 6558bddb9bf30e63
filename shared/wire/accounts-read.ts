import type { FieldError } from '../kernel/field-error.js';
import type { Reading } from '../kernel/reading.js';
import { findObjectFaults } from './find-object-faults.js';
import { sortFaults } from './sort-faults.js';

/**
 * Reads an object without objects in it, by the rules of its class; every fault at its own pointer.
 * @param related finds what is wrong between members; asked only when each is right by itself
 * @example readMembers(SignInDto, { signInName: 'ana' })
 * // { ok: false, errors: [{ pointer: '/password', detail: 'Missing: give text of 1 to 256 characters.' }] }
 */
export function readMembers<T extends object>(
  type: new () => T,
  input: unknown,
  related: (value: T) => readonly FieldError[] = () => [],
): Reading<T> {
  const faults = findObjectFaults(type, input, []);
  const errors = faults.length > 0 ? sortFaults(faults) : related(input as T);
  return errors.length > 0 ? { ok: false, errors } : { ok: true, value: input as T };
}
