import { createHash, randomBytes } from 'node:crypto';

/** 256 bits that nobody guesses: what a cookie holds. */
export const newToken = (): string => randomBytes(32).toString('base64url');

/** All that is kept of a token or a code. Nothing slower is needed: there is too much chance in them to try. */
export const hashOf = (secret: string): string => createHash('sha256').update(secret).digest('hex');

/** The digits and letters that nobody mistakes for one another when reading them aloud (Crockford's base 32). */
const LETTERS = '0123456789abcdefghjkmnpqrstvwxyz';

/**
 * Letters by chance, five bits each, for a person to copy: `newCode(8, 4)` is like `7km2-x0pq`.
 * @param group how many stand together
 */
export function newCode(length: number, group: number): string {
  const letters = Array.from(randomBytes(length), (byte) => LETTERS[byte % LETTERS.length]);
  return letters.join('').replace(new RegExp(`(.{${group}})(?=.)`, 'g'), '$1-');
}

/** A code as it was typed, made the one that was shown: `readCode(' 7KM2 XOPQ')` is `7km2x0pq`. */
export function readCode(typed: string): string {
  return typed
    .toLowerCase()
    .replace(/[^0-9a-z]/g, '')
    .replaceAll('o', '0')
    .replace(/[il]/g, '1');
}
