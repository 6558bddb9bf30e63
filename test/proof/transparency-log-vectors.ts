/**
 * The public transparency-log reference data for RFC 6962 hashing: inputs, roots, frontiers and proofs as in the
 * test package `testonly` of github.com/transparency-dev/merkle (constants.go and reference_test.go, read).
 * `merkle-log.test.ts` also recomputes every root from the definition with another SHA-256.
 */
export const LEAF_INPUTS = [
  '',
  '00',
  '10',
  '2021',
  '3031',
  '40414243',
  '5051525354555657',
  '606162636465666768696a6b6c6d6e6f',
];

/** ROOTS[n] is the root over the first n inputs. */
export const ROOTS = [
  'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
  '6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d',
  'fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125',
  'aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77',
  'd37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7',
  '4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4',
  '76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef',
  'ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c',
  '5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328',
] as const;

const LEAF_1 = '96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7';
const LEAF_2 = '0298d122906dcfc10892cb53a73992fc5b9f493ea4c9badb27b791b4127a7fe7';
const LEAF_4 = 'bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b';
const LEAF_6 = 'b08693ec2e721597130641e8211e7eedccb4c26413963eee6c1e2ed16ffb1a5f';
const LEAVES_2_3 = '5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e';
const LEAVES_4_5 = '0ebc5d3437fbe2db158b9f126a1d118e308181031d0a949f8dededebc558ef6a';
const LEAVES_6_7 = 'ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0';
const LEAVES_4_7 = '6b47aaf29ee3c2af9af889bc1fb9254dabd31177f16232dd6aab035ca39bf6e4';

/** FRONTIERS[n]: the roots of the complete subtrees over the first n inputs, largest first. */
export const FRONTIERS: readonly (readonly string[])[] = [
  [],
  [ROOTS[1]],
  [ROOTS[2]],
  [ROOTS[2], LEAF_2],
  [ROOTS[4]],
  [ROOTS[4], LEAF_4],
  [ROOTS[4], LEAVES_4_5],
  [ROOTS[4], LEAVES_4_5, LEAF_6],
  [ROOTS[8]],
];

export const INCLUSION_PROOFS: readonly { index: number; size: number; proof: readonly string[] }[] = [
  { index: 0, size: 1, proof: [] },
  { index: 0, size: 2, proof: [LEAF_1] },
  { index: 1, size: 2, proof: [ROOTS[1]] },
  { index: 2, size: 3, proof: [ROOTS[2]] },
  { index: 1, size: 5, proof: [ROOTS[1], LEAVES_2_3, LEAF_4] },
  { index: 0, size: 8, proof: [LEAF_1, LEAVES_2_3, LEAVES_4_7] },
  { index: 5, size: 8, proof: [LEAF_4, LEAVES_6_7, ROOTS[4]] },
];

export const CONSISTENCY_PROOFS: readonly { earlier: number; size: number; proof: readonly string[] }[] = [
  { earlier: 1, size: 1, proof: [] },
  { earlier: 1, size: 8, proof: [LEAF_1, LEAVES_2_3, LEAVES_4_7] },
  { earlier: 2, size: 5, proof: [LEAVES_2_3, LEAF_4] },
  { earlier: 6, size: 8, proof: [LEAVES_4_5, LEAVES_6_7, ROOTS[4]] },
];
