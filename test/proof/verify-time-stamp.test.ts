import { createHash, webcrypto } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { verifyTimeStamp } from '../../shared/proof/verify-time-stamp.js';
import { HEAD_TEXT, rootOf, tokenOf } from './time-stamp-fixtures.js';

const crypto = webcrypto as Crypto;
const check = (token: string, text = HEAD_TEXT, roots: Uint8Array[] = []) =>
  verifyTimeStamp(token, text, { crypto, roots });

describe('a time stamp that OpenSSL made', () => {
  it('says when, under which policy, and by whose certificate', async () => {
    // `openssl ts -reply -in … -text` and `openssl x509 -fingerprint -sha256` say the same of it.
    expect(await check(tokenOf('good'))).toEqual({
      ok: true,
      stamp: {
        at: '2026-11-26T19:06:13.000Z',
        policy: '1.3.6.1.4.1.32473.1',
        authority: 'Unit 1, Invented Time Authority',
        issuer: 'Invented Root, Invented Time Authority',
        certificate: '805353d3694c394edc5ce365d64ccaa3f75939602163b743608cd716b395d82b',
        trusted: null,
      },
    });
  });

  it.each([
    ['good', 'root', true],
    ['good', 'another-root', false],
    // By RSA with SHA-512, bound by SHA-1 (RFC 2634), over an issuer between.
    ['rsa-sha1-binding', 'root', true],
    ['rsa-sha1-binding', 'another-root', false],
  ])('%s leads to %s: %s', async (name, root, trusted) => {
    expect(await check(tokenOf(name), HEAD_TEXT, [rootOf(root)])).toMatchObject({
      ok: true,
      stamp: { trusted },
    });
  });

  it.each([
    ['wrong-purpose', /not one for time stamps/],
    ['no-binding', /not bound to the certificate/],
    ['expired', /not valid at that time/],
  ])('%s counts for nothing, as openssl ts -verify refuses it too', async (name, problem) => {
    const found = await check(tokenOf(name), HEAD_TEXT, [rootOf('root')]);
    expect(found).toMatchObject({ ok: false, problem: expect.stringMatching(problem) as string });
  });

  it('is of its own text alone', async () => {
    for (const text of ['', `${HEAD_TEXT}\n`, HEAD_TEXT.replace('17', '18')])
      expect(await check(tokenOf('good'), text)).toMatchObject({ ok: false });
  });

  const changedAt = async (place: number) => {
    const bytes = Buffer.from(tokenOf('good'), 'hex');
    bytes[place] = (bytes[place] ?? 0) ^ 1;
    return check(bytes.toString('hex'));
  };

  it('counts for nothing once a byte of what it says or of its signature was changed', async () => {
    const bytes = Buffer.from(tokenOf('good'), 'hex');
    const statement = bytes.indexOf(createHash('sha256').update(HEAD_TEXT).digest());
    // Imprint, serial number, time and accuracy stand in this order (RFC 3161, 2.4.2); the signature is the end.
    for (let place = statement; place < statement + 60; place += 7)
      expect([place, await changedAt(place)]).toMatchObject([place, { ok: false }]);
    for (let place = bytes.length - 60; place < bytes.length; place += 7)
      expect([place, await changedAt(place)]).toMatchObject([place, { ok: false }]);
  });

  it('never says anything else, whichever byte was changed: what is not signed is not told', async () => {
    const good = await check(tokenOf('good'));
    for (let place = 0; place < tokenOf('good').length / 2; place += 11) {
      const found = await changedAt(place);
      if (found.ok) expect([place, found]).toEqual([place, good]);
    }
  });

  it('cannot be read from anything else', async () => {
    for (const token of ['', '00', 'zz', '30820000', tokenOf('good').slice(0, 400)])
      expect(await check(token)).toMatchObject({ ok: false });
  });
});
