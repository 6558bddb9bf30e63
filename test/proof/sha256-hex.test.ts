import { describe, expect, it } from 'vitest';
import { isSha256Hex, sha256Hex } from '../../shared/proof/sha256-hex.js';
import { startSha256 } from '../../shared/proof/start-sha256.js';

const ascii = (text: string) => new TextEncoder().encode(text);
const bytes = (hex: string) => new Uint8Array(Buffer.from(hex, 'hex'));

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

/**
 * NIST CAVP, SHA256ShortMsg.rsp (CAVS 11.0, read): the shortest, and those around the end of a block, where the length
 * (64 bits) still fits into the block or begins another.
 */
const SHORT_MESSAGES: [message: string, digest: string][] = [
  ['d3', '28969cdfa74a12c82f3bad960b0b000aca2ac329deea5c2328ebc6f2ba9802c1'],
  ['11af', '5ca7133fa735326081558ac312c620eeca9970d1e70a4b95533d956f072d1f98'],
  ['b4190e', 'dff2e73091f6c05e528896c4c831b9448653dc2ff043528f6769437bc7b975c2'],
  [
    '3ebfb06db8c38d5ba037f1363e118550aad94606e26835a01af05078533cc25f2f39573c04b632f62f68c294ab31f2a3e2a1a0d8c2be51',
    '6595a2ef537a69ba8583dfbf7f5bec0ab1f93ce4c8ee1916eff44a93af5749c4',
  ],
  [
    '2d52447d1244d2ebc28650e7b05654bad35b3a68eedc7f8515306b496d75f3e73385dd1b002625024b81a02f2fd6dffb6e6d561cb7d0bd7a',
    'cfb88d6faf2de3a69d36195acec2e255e2af2b7d933997f348e09f6ce5758360',
  ],
  [
    'e2f76e97606a872e317439f1a03fcd92e632e5bd4e7cbc4e97f1afc19a16fde92d77cbe546416b51640cddb92af996534dfd81edb17c4424cf1ac4d75aceeb',
    '18041bd4665083001fba8c5411d2d748e8abbfdcdfd9218cb02b68a78e7d4c23',
  ],
  [
    '5a86b737eaea8ee976a0a24da63e7ed7eefad18a101c1211e2b3650c5187c2a8a650547208251f6d4237e661c7bf4c77f335390394c37fa1a9f9be836ac28509',
    '42e61e174fbb3897d6dd6cef3dd2802fe67b331953b06114a65c772859dfc1aa',
  ],
];

/** NIST CAVP, SHA256Monte.rsp (CAVS 11.1, read): the seed, and the digest after each thousand of the four first. */
const MONTE_SEED = '6d1e72ad03ddeb5de891e572e2396f8da015d899ef0e79503152d6010a3fe691';
const MONTE = [
  'e93c330ae5447738c8aa85d71a6c80f2a58381d05872d26bdd39f1fcd4f2b788',
  '2e78f8c8772ea7c9331d41ed3f9cdf27d8f514a99342ee766ee3b8b0d0b121c0',
  'd6a23dff1b7f2eddc1a212f8a218397523a799b07386a30692fd6fe9d2bf0944',
  'fb0099a964fad5a88cf12952f2991ce256a4ac3049f3d389c3b9e6c00e585db4',
];

/** One round of the Monte Carlo test of the SHA Validation System (NIST, SHAVS 6.4): a thousand digests of the last three. */
function monteRound(seed: string): string {
  let last = [seed, seed, seed];
  for (let n = 0; n < 1000; n += 1) last = [...last.slice(1), sha256Hex(bytes(last.join('')))];
  return last.at(-1) ?? '';
}

describe('SHA-256 of what comes in pieces', () => {
  it.each([...FIPS_180_4.map(([text, digest]) => [ascii(text), digest] as const)])(
    'is the FIPS 180-4 digest, whatever the pieces are',
    (message, digest) => {
      for (const length of [1, 3, 55, 63, 64, 65, 4096, 1_000_000]) {
        if (message.length / length > 20_000) continue;
        const running = startSha256();
        for (let at = 0; at < message.length; at += length) running.add(message.subarray(at, at + length));
        expect([length, running.hex()]).toEqual([length, digest]);
      }
    },
  );

  it.each(SHORT_MESSAGES)('is the CAVP digest of %.16s…, cut in two at every place', (message, digest) => {
    const whole = bytes(message);
    for (let at = 0; at <= whole.length; at += 1) {
      const running = startSha256();
      running.add(whole.subarray(0, at));
      running.add(whole.subarray(at));
      expect([at, running.hex()]).toEqual([at, digest]);
    }
  });
});

describe('SHA-256 in hex', () => {
  it.each(SHORT_MESSAGES)('gives the CAVP digest of %.16s…', (message, digest) => {
    expect(sha256Hex(bytes(message))).toBe(digest);
  });

  it('gives the CAVP digests of a Monte Carlo run', () => {
    let seed = MONTE_SEED;
    for (const digest of MONTE) {
      seed = monteRound(seed);
      expect(seed).toBe(digest);
    }
  });

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
