import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { JsonValue } from '../../shared/proof/canonical-json.js';
import { commitField, verifyField } from '../../shared/proof/commit-field.js';
import { UnprovableError } from '../../shared/proof/unprovable-error.js';

const SALT = '9f'.repeat(32);
const OTHER_SALT = '9f'.repeat(31) + '9e';
const PATH = '/people/0/birthDate';
const BIRTH_DATE = '1990-05-17';

const salt = fc
  .uint8Array({ minLength: 32, maxLength: 32 })
  .map((bytes) => Buffer.from(bytes).toString('hex'));
const value = fc.jsonValue().map((item) => JSON.parse(JSON.stringify(item)) as JsonValue);
const text = fc.string();

describe('a commitment to a field', () => {
  it('is the SHA-256 of a line that anybody can write', () => {
    const line = `["incident-desk/field/1","${SALT}","${PATH}","${BIRTH_DATE}"]`;
    const digest = createHash('sha256').update(line).digest('hex');
    expect(commitField(PATH, { salt: SALT, value: BIRTH_DATE })).toBe(digest);
  });

  it('is opened by its own salt, path and value', () => {
    fc.assert(
      fc.property(text, salt, value, (path, salt, value) => {
        expect(verifyField(commitField(path, { salt, value }), path, { salt, value })).toBe(true);
      }),
    );
  });

  it.each<[name: string, path: string, salt: string, value: JsonValue]>([
    ['another salt', PATH, OTHER_SALT, BIRTH_DATE],
    ['the salt in upper case', PATH, SALT.toUpperCase(), BIRTH_DATE],
    ['a cut salt', PATH, SALT.slice(2), BIRTH_DATE],
    ['no salt', PATH, '', BIRTH_DATE],
    ['another path', '/people/1/birthDate', SALT, BIRTH_DATE],
    ['another value', PATH, SALT, '1990-05-18'],
    ['a value of another type', PATH, SALT, [BIRTH_DATE]],
    ['nothing', PATH, SALT, null],
    ['a value that has no JSON', PATH, SALT, Number.NaN],
  ])('is not opened by %s', (_name, path, salt, value) => {
    const commitment = commitField(PATH, { salt: SALT, value: BIRTH_DATE });
    expect(verifyField(commitment, path, { salt, value })).toBe(false);
  });

  it('differs for equal values with different salts', () => {
    fc.assert(
      fc.property(text, value, fc.uniqueArray(salt, { minLength: 2, maxLength: 5 }), (path, value, salts) => {
        const commitments = salts.map((salt) => commitField(path, { salt, value }));
        expect(new Set(commitments).size).toBe(salts.length);
      }),
    );
  });

  it('is not shared by inputs whose parts are cut differently', () => {
    const a = commitField('/a', { salt: SALT, value: 'b","c' });
    expect(commitField('/a","b', { salt: SALT, value: 'c' })).not.toBe(a);
  });

  it.each(['', 'f'.repeat(63), 'F'.repeat(64), 'g'.repeat(64)])('needs a salt of 32 bytes: %j', (salt) => {
    expect(() => commitField(PATH, { salt, value: BIRTH_DATE })).toThrow(UnprovableError);
  });
});

describe('a masked birth date', () => {
  /** Every day from 1930 to 2025. */
  const dates = Array.from({ length: 35_064 }, (_, day) =>
    new Date(Date.UTC(1930, 0, 1 + day)).toISOString().slice(0, 10),
  );
  const commitment = commitField(PATH, { salt: SALT, value: BIRTH_DATE });
  const guess = (salt: string) => dates.filter((value) => commitField(PATH, { salt, value }) === commitment);

  it('would be found by trying all dates if its salt were known', () => {
    expect(dates.at(-1)).toBe('2025-12-31');
    expect(guess(SALT)).toEqual([BIRTH_DATE]);
  });

  it('is not found by trying all dates with what the proof shows', () => {
    const saltOfAnotherField = '3c'.repeat(32);
    for (const salt of [saltOfAnotherField, commitment]) expect(guess(salt)).toEqual([]);
  });

  it('is not found by hashing all dates without a salt', () => {
    const plain = [(date: string) => date, (date: string) => `"${date}"`, (date: string) => `${PATH}${date}`];
    const hashes = dates.flatMap((date) =>
      plain.map((write) => createHash('sha256').update(write(date)).digest('hex')),
    );
    expect(hashes).not.toContain(commitment);
  });
});
