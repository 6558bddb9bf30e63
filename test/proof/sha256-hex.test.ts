import { describe, expect, it } from 'vitest';
import { isSha256Hex, sha256Hex } from '../../shared/proof/sha256-hex.js';

const ascii = (text: string) => new TextEncoder().encode(text);

/** Messages of FIPS 180-4 and its example papers (NIST). "abc" is read; the others are from memory. */
const FIPS_180_4: [message: string, digest: string][] = [
  ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  [
    'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  ],
  [
    'abcdefghbcdefghicdefghijdefghijkefghijklfghijklmghijklmnhijklmnoijklmnopjklmnopqklmnopqrlmnopqrsmnopqrstnopqrstu',
    'cf5b16a778af8380036ce59e7b0492370b249b11e8f07a51afac45037afee9d1',
  ],
  ['a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
];

describe('SHA-256 in hex', () => {
  it.each(FIPS_180_4)('gives the FIPS 180-4 digest of %.20s', (message, digest) => {
    expect(sha256Hex(ascii(message))).toBe(digest);
  });

  it.each<[value: unknown, is: boolean]>([
    ['0'.repeat(64), true],
    ['0123456789abcdef'.repeat(4), true],
    ['0123456789ABCDEF'.repeat(4), false],
    ['0'.repeat(63), false],
    ['0'.repeat(65), false],
    [`${'0'.repeat(64)}\n`, false],
    ['g'.repeat(64), false],
    [['0'.repeat(64)], false],
    [undefined, false],
  ])('tells whether %j is the written form of a hash', (value, is) => {
    expect(isSha256Hex(value)).toBe(is);
  });
});
