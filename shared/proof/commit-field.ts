import { canonicalBytes, type JsonValue } from './canonical-json.js';
import { isSha256Hex, sha256Hex } from './sha256-hex.js';
import { UnprovableError } from './unprovable-error.js';

/** What opens a commitment. To mask or withdraw a value, keep back or destroy both; the commitment stays. */
export interface Opening {
  /** 32 random bytes as 64 lower-case hex digits, drawn anew for every commitment and never used twice. */
  readonly salt: string;
  /** The value; `null` where there was nothing. */
  readonly value: JsonValue;
}

/** Sets these hashes apart from every other hash, and says by which rule they were made. */
const DOMAIN = 'incident-desk/field/1';

/**
 * The commitment to one field: SHA-256 over the canonical JSON of `[domain, salt, path, value]`. It binds to
 * the value without showing it: who lacks the salt cannot try out values, however few there are. The canonical
 * array lets no two inputs share one text, and anybody can redo it with a text editor and `sha256sum`.
 *
 * `path` is the RFC 6901 pointer of the field in the record. Throws an `UnprovableError` for a salt of another
 * form and for a value without canonical JSON.
 * @example
 * commitField('/people/0/birthDate', { salt: '11'.repeat(32), value: '1990-05-17' })
 * // sha256 of '["incident-desk/field/1","1111…11","/people/0/birthDate","1990-05-17"]'
 */
export function commitField(path: string, opening: Opening): string {
  if (!isSha256Hex(opening.salt)) {
    throw new UnprovableError('/salt', 'A salt is 32 bytes, written as 64 lower-case hex digits.');
  }
  return sha256Hex(canonicalBytes([DOMAIN, opening.salt, path, opening.value]));
}

/**
 * Whether the opening belongs to the commitment of that field. False, never an exception, for what nobody
 * could have committed to.
 * @example
 * const opening = { salt: '11'.repeat(32), value: '1990-05-17' };
 * verifyField(commitField('/birthDate', opening), '/birthDate', opening) // true
 */
export function verifyField(commitment: string, path: string, opening: Opening): boolean {
  try {
    return commitField(path, opening) === commitment;
  } catch (error) {
    if (error instanceof UnprovableError) return false;
    throw error;
  }
}
