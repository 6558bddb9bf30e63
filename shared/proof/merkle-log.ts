import { hexToBytes } from '@noble/hashes/utils.js';
import { sha256Hex } from './sha256-hex.js';

/**
 * The Merkle tree of RFC 6962 section 2.1 (unchanged in RFC 9162 section 2.1.1). Hashes are hex strings
 * throughout, so that heads, proofs and frontiers are plain values to store and send.
 */

/** All that has to be remembered of a log to prove later that it only grew. */
export interface LogHead {
  /** Number of leaves. */
  readonly size: number;
  readonly root: string;
}

/** A head as people and time-stamping authorities are given it: `headText({ size: 17, root: 'ab…' })` is `17:ab…`. */
export function headText({ size, root }: LogHead): string {
  return `${size}:${root}`;
}

/** A log with the hashes of all its complete subtrees, so that each proof costs O(log n). */
export interface MerkleTree {
  /** `levels[k][i]` is the hash over the leaves from i·2^k to (i+1)·2^k; level 0 holds the leaf hashes. */
  readonly levels: readonly (readonly string[])[];
}

/** The root of a log without leaves: the hash of an empty string. */
export const EMPTY_ROOT = sha256Hex(new Uint8Array());

/**
 * SHA-256(0x00 ‖ data). The prefix keeps anybody from passing off an inner node as a leaf.
 * @example leafHash(new Uint8Array()) // '6e340b9cffb37a98…17afa01d'
 */
export function leafHash(data: Uint8Array): string {
  const bytes = new Uint8Array(data.length + 1);
  bytes.set(data, 1);
  return sha256Hex(bytes);
}

/**
 * SHA-256(0x01 ‖ left ‖ right).
 * @example nodeHash(leafHash(a), leafHash(b)) // the root of a log of the two leaves a and b
 */
export function nodeHash(left: string, right: string): string {
  return sha256Hex(hexToBytes(`01${left}${right}`));
}

/**
 * Hashes a whole log once, in O(n).
 * @example headAt(buildTree([])) // { size: 0, root: EMPTY_ROOT }
 */
export function buildTree(leafHashes: readonly string[]): MerkleTree {
  const levels = [leafHashes];
  for (let below = leafHashes; below.length > 1;) {
    below = joinPairs(below);
    levels.push(below);
  }
  return { levels };
}

/** Number of leaves: `sizeOf(buildTree([a, b, c]))` is 3. */
export function sizeOf(tree: MerkleTree): number {
  return tree.levels[0]?.length ?? 0;
}

/**
 * The head the log had when it held its first `size` leaves; without a size, its head now.
 * Throws a `RangeError` for a size that the log never had.
 * @example headAt(buildTree([a, b, c]), 1) // { size: 1, root: a }
 */
export function headAt(tree: MerkleTree, size = sizeOf(tree)): LogHead {
  if (!Number.isSafeInteger(size) || size < 0 || size > sizeOf(tree)) {
    throw new RangeError(`A log of ${sizeOf(tree)} leaves has no head of size ${size}.`);
  }
  return { size, root: size === 0 ? EMPTY_ROOT : subtreeHash(tree, 0, size) };
}

/**
 * MTH(D[start:end]), for the ranges that the recursion of RFC 6962 section 2.1 meets, 0 ≤ start < end ≤ size:
 * those begin at a multiple of the power of two that is not less than their length.
 * @example subtreeHash(buildTree([a, b, c]), 0, 2) // nodeHash(a, b)
 */
export function subtreeHash(tree: MerkleTree, start: number, end: number): string {
  const length = end - start;
  const split = splitPoint(length);
  if (length > 1 && split * 2 !== length) {
    return nodeHash(subtreeHash(tree, start, start + split), subtreeHash(tree, start + split, end));
  }
  // A power of two: the subtree is complete, and its level is the place of the one bit in its length.
  const hash = tree.levels[31 - Math.clz32(length)]?.[start / length];
  if (hash === undefined) throw new RangeError(`The log holds no leaves from ${start} to ${end}.`);
  return hash;
}

/**
 * The largest power of two below n (RFC 6962 section 2.1: k < n ≤ 2k).
 * @example splitPoint(7) // 4, and splitPoint(8) is 4 as well
 */
export function splitPoint(n: number): number {
  let power = 1;
  while (power * 2 < n) power *= 2;
  return power;
}

function joinPairs(below: readonly string[]): string[] {
  const above: string[] = [];
  let left: string | undefined;
  for (const hash of below) {
    if (left === undefined) {
      left = hash;
    } else {
      above.push(nodeHash(left, hash));
      left = undefined;
    }
  }
  return above;
}
