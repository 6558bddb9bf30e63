import { climb, stepsToRoot } from './climb-path.js';
import { sizeOf, splitPoint, subtreeHash, type LogHead, type MerkleTree } from './merkle-log.js';
import { isSha256Hex } from './sha256-hex.js';

/** The statement that a leaf stands at a place of the log that has this head. */
export interface InclusionClaim {
  readonly leafHash: string;
  /** From 0: amendment n is leaf n − 1. */
  readonly index: number;
  readonly head: LogHead;
}

/**
 * The audit path of a leaf in the log of the given size, PATH(m, D[n]) of RFC 6962 section 2.1.1: the hashes
 * that lead from the leaf to the root, nearest first. Throws a `RangeError` for a leaf or a size that the log
 * has not.
 * @example proveInclusion(buildTree([a, b, c]), 2) // [nodeHash(a, b)]
 */
export function proveInclusion(tree: MerkleTree, index: number, size = sizeOf(tree)): string[] {
  const known = Number.isSafeInteger(size) && size <= sizeOf(tree);
  if (!known || !Number.isSafeInteger(index) || index < 0 || index >= size) {
    throw new RangeError(`A log of ${sizeOf(tree)} leaves proves no leaf ${index} in its first ${size}.`);
  }
  const path = (start: number, end: number): string[] => {
    if (end - start === 1) return [];
    const middle = start + splitPoint(end - start);
    return index < middle
      ? [...path(start, middle), subtreeHash(tree, middle, end)]
      : [...path(middle, end), subtreeHash(tree, start, middle)];
  };
  return path(0, size);
}

/**
 * Whether the proof shows the claim, by RFC 9162 section 2.1.3.2. False for anything else, never an exception.
 * @example
 * verifyInclusion({ leafHash: c, index: 2, head: headAt(tree) }, [nodeHash(a, b)]) // true for the tree of a, b, c
 */
export function verifyInclusion(claim: InclusionClaim, proof: readonly string[]): boolean {
  const { leafHash, index, head } = claim;
  if (!Number.isSafeInteger(index) || !Number.isSafeInteger(head.size)) return false;
  if (index < 0 || index >= head.size || ![leafHash, ...proof].every(isSha256Hex)) return false;
  const steps = stepsToRoot(index, head.size - 1, proof);
  return steps !== undefined && climb(leafHash, steps) === head.root;
}
