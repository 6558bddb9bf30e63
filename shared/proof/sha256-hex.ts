import { sha256 } from '@noble/hashes/sha2.js';

const DIGITS = '0123456789abcdef';
const SHA256_HEX = /^[0-9a-f]{64}$/;

/**
 * SHA-256 (FIPS 180-4 section 6.2) as 64 lower-case hex digits, the one form in which this room keeps a hash.
 * @example sha256Hex(new Uint8Array()) // 'e3b0c44298fc1c14…7852b855'
 */
export function sha256Hex(bytes: Uint8Array): string {
  return toHex(sha256(bytes));
}

/**
 * Whether a value is 32 bytes as lower-case hex. Upper case is refused: a hash has one written form.
 * @example isSha256Hex('E3B0') // false
 */
export function isSha256Hex(value: unknown): value is string {
  return typeof value === 'string' && SHA256_HEX.test(value);
}

/**
 * In one piece: a text put together digit by digit stays a chain of pieces in memory, some kilobytes for each
 * hash, which makes a log of a hundred thousand leaves three times slower.
 */
function toHex(bytes: Uint8Array): string {
  const codes: number[] = [];
  for (const byte of bytes) codes.push(DIGITS.charCodeAt(byte >> 4), DIGITS.charCodeAt(byte & 15));
  return String.fromCharCode(...codes);
}
