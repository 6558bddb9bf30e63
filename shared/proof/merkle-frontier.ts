import { EMPTY_ROOT, nodeHash, type LogHead } from './merkle-log.js';

/**
 * What a log must keep in order to grow: the roots of its complete subtrees, the largest (leftmost) first, one
 * for each 1 in the binary form of the size. It is a plain value: store it as JSON beside the last leaf.
 */
export interface Frontier {
  readonly size: number;
  readonly nodes: readonly string[];
}

/** The frontier of a log without leaves. */
export const EMPTY_FRONTIER: Frontier = { size: 0, nodes: [] };

/**
 * Adds one leaf in O(log n), by the stack of RFC 9162 section 2.1.2: two complete subtrees of one size become
 * one. Throws a `RangeError` for a frontier that no log has (stored wrongly, or cut).
 * @example appendLeaf(appendLeaf(EMPTY_FRONTIER, a), b) // { size: 2, nodes: [nodeHash(a, b)] }
 */
export function appendLeaf(frontier: Frontier, leaf: string): Frontier {
  requireWhole(frontier);
  const { size, nodes } = frontier;
  const kept = nodes.length - trailingOnes(size);
  const joined = nodes.slice(kept).reduceRight((right, left) => nodeHash(left, right), leaf);
  return { size: size + 1, nodes: [...nodes.slice(0, kept), joined] };
}

/**
 * The head of the log, from its frontier alone. Throws a `RangeError` for a frontier that no log has.
 * @example frontierHead(EMPTY_FRONTIER) // { size: 0, root: EMPTY_ROOT }
 */
export function frontierHead(frontier: Frontier): LogHead {
  requireWhole(frontier);
  const { size, nodes } = frontier;
  return { size, root: size === 0 ? EMPTY_ROOT : nodes.reduceRight((right, left) => nodeHash(left, right)) };
}

function requireWhole({ size, nodes }: Frontier): void {
  if (!Number.isSafeInteger(size) || size < 0 || nodes.length !== countOnes(size)) {
    throw new RangeError(`A log of ${size} leaves has no frontier of ${nodes.length} nodes.`);
  }
}

function countOnes(n: number): number {
  return n === 0 ? 0 : (n % 2) + countOnes(Math.floor(n / 2));
}

function trailingOnes(n: number): number {
  return n % 2 === 0 ? 0 : 1 + trailingOnes(Math.floor(n / 2));
}
