import { describe, expect, it } from 'vitest';
import { standingOn } from '../../src/server/accounts/certificate-standing.js';
import { networkOf } from '../../src/server/accounts/network-of.js';
import { newCode, readCode } from '../../src/server/accounts/secrets.js';
import { signInKey } from '../../src/server/accounts/sign-in-key.js';

// RFC 4291, section 2.2 (how IPv6 addresses are written) and 2.5.5.2 (IPv4-mapped); documentation ranges throughout.
describe('a place on the network', () => {
  it.each([
    ['192.0.2.4', '192.0.2.4'],
    ['::ffff:192.0.2.4', '192.0.2.4'],
    ['2001:db8:0:7::5', '2001:db8:0:7::/64'],
    ['2001:db8:0:7:1:2:3:4', '2001:db8:0:7::/64'],
    ['2001:db8::', '2001:db8:0:0::/64'],
    ['2001:db8::1', '2001:db8:0:0::/64'],
    ['::1', '0:0:0:0::/64'],
    ['fe80::1%eth0', 'fe80:0:0:0::/64'],
  ])('%s is in %s', (address, network) => {
    expect(networkOf(address)).toBe(network);
  });
});

describe('a code', () => {
  it('is read as it was written, however it is typed', () => {
    for (let tries = 0; tries < 200; tries += 1) {
      const code = newCode(12, 4);
      const typed = code.toUpperCase().replaceAll('-', ' ').replaceAll('0', 'O').replaceAll('1', 'L');
      expect(readCode(typed)).toBe(code.replaceAll('-', ''));
    }
  });

  it('is another one each time', () => {
    expect(new Set(Array.from({ length: 200 }, () => newCode(12, 4))).size).toBe(200);
  });
});

describe('a certificate', () => {
  it.each([
    ['2026-06-13', null, 'no-end'],
    ['2026-06-13', '2026-06-12', 'out-of-date'],
    ['2026-06-13', '2026-06-13', 'ends-soon'],
    ['2026-06-13', '2026-07-13', 'ends-soon'],
    ['2026-06-13', '2026-07-14', 'in-date'],
  ])('on %s, when it ends on %s, is %s', (day, expiresOn, standing) => {
    expect(standingOn(day, expiresOn)).toBe(standing);
  });
});

it.each([
  ['Ana Ruiz', 'ana ruiz'],
  ['  ana\t RUIZ ', 'ana ruiz'],
  ['Ａna', 'ana'],
  ['ÉLI', 'éli'],
])('%j signs in as %j', (typed, key) => {
  expect(signInKey(typed)).toBe(key);
});
