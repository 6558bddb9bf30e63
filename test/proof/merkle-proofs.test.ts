import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildTree, EMPTY_ROOT, headAt, leafHash } from '../../shared/proof/merkle-log.js';
import { proveConsistency, verifyConsistency } from '../../shared/proof/prove-consistency.js';
import { proveInclusion, verifyInclusion } from '../../shared/proof/prove-inclusion.js';
import { CONSISTENCY_PROOFS, INCLUSION_PROOFS, LEAF_INPUTS, ROOTS } from './transparency-log-vectors.js';

const hashesOf = (inputs: readonly string[]) => inputs.map((hex) => leafHash(Buffer.from(hex, 'hex')));
const TREE = buildTree(hashesOf(LEAF_INPUTS));
const headOf = (size: number) => ({ size, root: ROOTS[size] ?? '' });

/** A log of `size` different leaves. */
const logOf = (size: number) =>
  buildTree(Array.from({ length: size }, (_, n) => leafHash(Buffer.from(`leaf ${n}`))));
const leafOf = (index: number) => leafHash(Buffer.from(`leaf ${index}`));

const MAX_SIZE = 130;
const sizeAndIndex = fc
  .integer({ min: 1, max: MAX_SIZE })
  .chain((size) => fc.tuple(fc.constant(size), fc.nat({ max: size - 1 })));
const twoSizes = fc
  .integer({ min: 2, max: MAX_SIZE })
  .chain((size) => fc.tuple(fc.integer({ min: 1, max: size - 1 }), fc.constant(size)));

/** One bit of one hex digit turned over. */
function tamper(hash: string, position: number): string {
  const at = position % hash.length;
  const digit = (Number.parseInt(hash.charAt(at), 16) ^ 1).toString(16);
  return hash.slice(0, at) + digit + hash.slice(at + 1);
}

/** Every way of spoiling a proof in one place. */
function spoil(proof: readonly string[], position: number): string[][] {
  const changed = proof.map((hash, at) => proof.with(at, tamper(hash, position)));
  const shorter = proof.map((_, at) => proof.toSpliced(at, 1));
  const longer = [...proof, ''].map((_, at) => proof.toSpliced(at, 0, leafOf(position)));
  const upperCase = proof
    .map((hash, at) => proof.with(at, hash.toUpperCase()))
    .filter((list) => list.join() !== proof.join());
  return [...changed, ...shorter, ...longer, ...upperCase];
}

describe('an inclusion proof (RFC 6962 section 2.1.1, RFC 9162 section 2.1.3)', () => {
  it.each(INCLUSION_PROOFS)('is the reference proof of leaf $index of $size', ({ index, size, proof }) => {
    expect(proveInclusion(TREE, index, size)).toEqual(proof);
    const [hash = ''] = hashesOf(LEAF_INPUTS.slice(index, index + 1));
    expect(verifyInclusion({ leafHash: hash, index, head: headOf(size) }, proof)).toBe(true);
  });

  it('verifies for every leaf of every log', () => {
    for (let size = 1; size <= 40; size += 1) {
      const tree = logOf(size);
      for (let index = 0; index < size; index += 1) {
        const claim = { leafHash: leafOf(index), index, head: headAt(tree) };
        expect(verifyInclusion(claim, proveInclusion(tree, index))).toBe(true);
      }
    }
  });

  it('fails with any digit changed, and with a hash removed or added', () => {
    fc.assert(
      fc.property(sizeAndIndex, fc.nat({ max: 63 }), ([size, index], position) => {
        const tree = logOf(size);
        const claim = { leafHash: leafOf(index), index, head: headAt(tree) };
        const proof = proveInclusion(tree, index);
        for (const spoilt of spoil(proof, position)) expect(verifyInclusion(claim, spoilt)).toBe(false);
        const { root } = claim.head;
        expect(verifyInclusion({ ...claim, leafHash: tamper(claim.leafHash, position) }, proof)).toBe(false);
        expect(verifyInclusion({ ...claim, head: { size, root: tamper(root, position) } }, proof)).toBe(
          false,
        );
      }),
    );
  });

  it('does not verify for another place', () => {
    fc.assert(
      fc.property(sizeAndIndex, fc.nat({ max: MAX_SIZE }), ([size, index], other) => {
        const tree = logOf(size);
        const claim = { leafHash: leafOf(index), index: other, head: headAt(tree) };
        expect(verifyInclusion(claim, proveInclusion(tree, index))).toBe(other === index);
      }),
    );
  });

  it.each<[name: string, index: number, size: number]>([
    ['a place behind the end', 8, 8],
    ['a negative place', -1, 8],
    ['half a place', 0.5, 8],
    ['a log of half a leaf', 0, 0.5],
    ['an empty log', 0, 0],
    ['a size beyond counting', 0, Number.POSITIVE_INFINITY],
    ['a size that 32 bits would cut to 8', 0, 2 ** 32 + 8],
  ])('is false, not an exception, for %s', (_name, index, size) => {
    const claim = { leafHash: leafHash(new Uint8Array()), index, head: { size, root: ROOTS[8] } };
    expect(verifyInclusion(claim, proveInclusion(TREE, 0))).toBe(false);
  });

  it('is false, not an exception, for what is no hash', () => {
    const claim = { leafHash: 'zz', index: 0, head: { size: 1, root: 'zz' } };
    expect(verifyInclusion(claim, [])).toBe(false);
    expect(verifyInclusion({ ...claim, leafHash: ROOTS[1], head: headOf(2) }, ['not a hash'])).toBe(false);
  });

  it.each([
    [8, 8],
    [-1, 8],
    [0, 9],
    [0.5, 8],
    [0, Number.NaN],
  ])('is not made for leaf %d of %d', (index, size) => {
    expect(() => proveInclusion(TREE, index, size)).toThrow(RangeError);
  });
});

describe('a consistency proof (RFC 6962 section 2.1.2, RFC 9162 section 2.1.4)', () => {
  it.each(CONSISTENCY_PROOFS)('is the reference proof from $earlier to $size', ({ earlier, size, proof }) => {
    expect(proveConsistency(TREE, earlier, size)).toEqual(proof);
    expect(verifyConsistency(headOf(earlier), headOf(size), proof)).toBe(true);
  });

  it('verifies between any two sizes of a log', () => {
    const tree = logOf(40);
    for (let size = 0; size <= 40; size += 1) {
      for (let earlier = 0; earlier <= size; earlier += 1) {
        const proof = proveConsistency(tree, earlier, size);
        expect(verifyConsistency(headAt(tree, earlier), headAt(tree, size), proof)).toBe(true);
      }
    }
  });

  it('fails with any digit changed, and with a hash removed or added', () => {
    fc.assert(
      fc.property(twoSizes, fc.nat({ max: 63 }), ([earlier, size], position) => {
        const tree = logOf(size);
        const [then, now] = [headAt(tree, earlier), headAt(tree)];
        const proof = proveConsistency(tree, earlier);
        for (const spoilt of spoil(proof, position)) expect(verifyConsistency(then, now, spoilt)).toBe(false);
        expect(verifyConsistency({ ...then, root: tamper(then.root, position) }, now, proof)).toBe(false);
        expect(verifyConsistency(then, { ...now, root: tamper(now.root, position) }, proof)).toBe(false);
      }),
    );
  });

  it('fails when an old leaf was changed before the log grew', () => {
    fc.assert(
      fc.property(twoSizes, fc.nat(), ([earlier, size], number) => {
        const honest = Array.from({ length: size }, (_, n) => leafOf(n));
        const forged = buildTree(honest.with(number % earlier, leafOf(1000)));
        const then = headAt(buildTree(honest), earlier);
        expect(verifyConsistency(then, headAt(forged), proveConsistency(forged, earlier))).toBe(false);
      }),
    );
  });

  it.each<[name: string, earlier: { size: number; root: string }, later: { size: number; root: string }]>([
    ['a log that shrank', headOf(8), headOf(4)],
    ['a log that shrank under one root', { size: 8, root: ROOTS[8] }, { size: 5, root: ROOTS[8] }],
    ['two roots of one size', headOf(8), { size: 8, root: ROOTS[7] }],
    ['a wrong empty root', { size: 0, root: ROOTS[1] }, headOf(8)],
    ['a negative size', { size: -1, root: EMPTY_ROOT }, headOf(8)],
    ['half a leaf', { size: 0.5, root: ROOTS[1] }, headOf(8)],
    ['a size beyond counting', headOf(4), { size: Number.POSITIVE_INFINITY, root: ROOTS[8] }],
    ['an earlier root that is no hash', { size: 4, root: 'zz' }, headOf(8)],
    ['a later root that is no hash', headOf(4), { size: 8, root: 'zz' }],
  ])('is false, not an exception, for %s', (_name, earlier, later) => {
    for (const proof of [[], proveConsistency(TREE, 4), ['not a hash']]) {
      expect(verifyConsistency(earlier, later, proof)).toBe(false);
    }
  });

  it.each([
    [9, 9],
    [5, 4],
    [-1, 4],
    [0.5, 4],
    [0, Number.NaN],
  ])('is not made from %d to %d', (earlier, size) => {
    expect(() => proveConsistency(TREE, earlier, size)).toThrow(RangeError);
  });
});
