import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  appendLeaf,
  EMPTY_FRONTIER,
  frontierHead,
  type Frontier,
} from '../../shared/proof/merkle-frontier.js';
import {
  buildTree,
  EMPTY_ROOT,
  headAt,
  leafHash,
  sizeOf,
  splitPoint,
} from '../../shared/proof/merkle-log.js';
import { FRONTIERS, LEAF_INPUTS, ROOTS } from './transparency-log-vectors.js';

const LEAVES = LEAF_INPUTS.map((hex) => leafHash(Buffer.from(hex, 'hex')));

const sha256 = (...parts: Uint8Array[]) => createHash('sha256').update(Buffer.concat(parts)).digest();

/** MTH(D[n]) written out from the definition in RFC 6962 section 2.1, with the SHA-256 of the platform. */
function rootByDefinition(data: readonly Uint8Array[]): Buffer {
  const [first] = data;
  if (first === undefined) return sha256();
  if (data.length === 1) return sha256(Buffer.of(0), first);
  const k = 2 ** Math.floor(Math.log2(data.length - 1));
  return sha256(Buffer.of(1), rootByDefinition(data.slice(0, k)), rootByDefinition(data.slice(k)));
}

const logData = fc.array(fc.uint8Array({ maxLength: 40 }), { maxLength: 70 });
const grow = (leaves: readonly string[]) => leaves.reduce(appendLeaf, EMPTY_FRONTIER);

describe('the root of a log (RFC 6962 section 2.1)', () => {
  it.each(ROOTS.map((root, size) => ({ size, root })))(
    'of the first $size reference inputs',
    ({ size, root }) => {
      expect(headAt(buildTree(LEAVES.slice(0, size)))).toEqual({ size, root });
      expect(headAt(buildTree(LEAVES), size)).toEqual({ size, root });
      const data = LEAF_INPUTS.slice(0, size).map((hex) => Buffer.from(hex, 'hex'));
      expect(rootByDefinition(data).toString('hex')).toBe(root);
    },
  );

  it('follows the definition for logs of every size', () => {
    fc.assert(
      fc.property(logData, (data) => {
        const { root } = headAt(buildTree(data.map(leafHash)));
        expect(root).toBe(rootByDefinition(data).toString('hex'));
      }),
    );
  });

  it('remembers the head of every earlier size', () => {
    fc.assert(
      fc.property(logData, fc.nat(), (data, number) => {
        const size = number % (data.length + 1);
        const { root } = headAt(buildTree(data.map(leafHash)), size);
        expect(root).toBe(rootByDefinition(data.slice(0, size)).toString('hex'));
      }),
    );
  });

  it.each([-1, 9, 1.5, Number.NaN])('has no head of size %d with 8 leaves', (size) => {
    expect(() => headAt(buildTree(LEAVES), size)).toThrow(/no head of size/);
  });

  it('knows how many leaves it holds', () => {
    expect([[], LEAVES.slice(0, 1), LEAVES].map((leaves) => sizeOf(buildTree(leaves)))).toEqual([0, 1, 8]);
  });

  /** The cases of the reference package for the same function (transparency-dev/merkle, reference_test.go). */
  it.each([
    [2, 1],
    [7, 4],
    [8, 4],
    [63, 32],
    [28937, 16384],
  ])('splits %d leaves after the first %d', (n, k) => {
    expect(splitPoint(n)).toBe(k);
  });
});

describe('the frontier of a growing log (RFC 9162 section 2.1.2)', () => {
  it.each(FRONTIERS.map((nodes, size) => ({ size, nodes })))(
    'holds the reference nodes at size $size',
    ({ size, nodes }) => {
      const frontier = grow(LEAVES.slice(0, size));
      expect(frontier).toEqual({ size, nodes });
      expect(frontierHead(frontier)).toEqual({ size, root: ROOTS[size] });
    },
  );

  it('has the root of the whole log after every leaf, also when stored between two leaves', () => {
    fc.assert(
      fc.property(logData, (data) => {
        const leaves = data.map(leafHash);
        const tree = buildTree(leaves);
        let frontier = EMPTY_FRONTIER;
        for (const [index, leaf] of leaves.entries()) {
          frontier = JSON.parse(JSON.stringify(appendLeaf(frontier, leaf))) as Frontier;
          expect(frontierHead(frontier)).toEqual(headAt(tree, index + 1));
        }
      }),
    );
  });

  it('leaves the frontier it was given as it is', () => {
    const before = grow(LEAVES.slice(0, 7));
    const copy = structuredClone(before);
    appendLeaf(before, EMPTY_ROOT);
    expect(before).toEqual(copy);
  });

  it.each<[name: string, frontier: Frontier]>([
    ['a node lost', { size: 3, nodes: [ROOTS[2]] }],
    ['a node too many', { size: 4, nodes: [ROOTS[2], ROOTS[2]] }],
    ['nodes without leaves', { size: 0, nodes: [ROOTS[1]] }],
    ['half a leaf', { size: 0.5, nodes: [] }],
    ['a negative size', { size: -1, nodes: [] }],
    ['a size beyond counting', { size: Number.POSITIVE_INFINITY, nodes: [] }],
  ])('is refused with %s', (_name, frontier) => {
    expect(() => appendLeaf(frontier, EMPTY_ROOT)).toThrow(/no frontier/);
    expect(() => frontierHead(frontier)).toThrow(/no frontier/);
  });
});
