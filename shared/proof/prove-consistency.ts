import { climb, parent, stepsToRoot } from './climb-path.js';
import { EMPTY_ROOT, sizeOf, splitPoint, subtreeHash, type LogHead, type MerkleTree } from './merkle-log.js';
import { isSha256Hex } from './sha256-hex.js';

/**
 * The proof that the log of `size` leaves begins with the log it was at `earlier` leaves, PROOF(m, D[n]) of
 * RFC 6962 section 2.1.2. It is empty when the two are one size, and when the earlier log was empty: every log
 * grows out of that. Throws a `RangeError` for sizes that the log never had.
 * @example proveConsistency(buildTree([a, b, c]), 2) // [c]
 */
export function proveConsistency(tree: MerkleTree, earlier: number, size = sizeOf(tree)): string[] {
  const known = Number.isSafeInteger(size) && size <= sizeOf(tree);
  if (!known || !Number.isSafeInteger(earlier) || earlier < 0 || earlier > size) {
    throw new RangeError(`A log of ${sizeOf(tree)} leaves did not grow from ${earlier} to ${size}.`);
  }
  // SUBPROOF(m, D[start:end], b); `whole` is b: the verifier knows the hash over D[start:earlier] already.
  const subproof = (start: number, end: number, whole: boolean): string[] => {
    if (earlier === end) return whole ? [] : [subtreeHash(tree, start, end)];
    const middle = start + splitPoint(end - start);
    return earlier <= middle
      ? [...subproof(start, middle, whole), subtreeHash(tree, middle, end)]
      : [...subproof(middle, end, false), subtreeHash(tree, start, middle)];
  };
  return earlier === 0 ? [] : subproof(0, size, true);
}

/**
 * Whether the proof shows that the later log begins with the earlier one, by RFC 9162 section 2.1.4.2: nothing
 * of it changed, was removed or put in between. False for anything else, never an exception.
 * @example verifyConsistency(headAt(tree, 2), headAt(tree, 3), [c]) // true for the tree of a, b, c
 */
export function verifyConsistency(earlier: LogHead, later: LogHead, proof: readonly string[]): boolean {
  if (!Number.isSafeInteger(earlier.size) || !Number.isSafeInteger(later.size)) return false;
  if (earlier.size < 0 || earlier.size > later.size) return false;
  if (![earlier.root, later.root, ...proof].every(isSha256Hex)) return false;
  if (earlier.size === 0) return proof.length === 0 && earlier.root === EMPTY_ROOT;
  if (earlier.size === later.size) return proof.length === 0 && earlier.root === later.root;
  const [place, last] = completeSubtree(earlier.size - 1, later.size - 1);
  // An earlier log of 2^k leaves is itself the node to start from; the proof leaves it out.
  const [node, ...siblings] = place === 0 ? [earlier.root, ...proof] : proof;
  const steps = stepsToRoot(place, last, siblings);
  if (node === undefined || steps === undefined) return false;
  // What lies to the left was there in the earlier log already; what lies to the right came later.
  const stepsThen = steps.filter(({ side }) => side === 'left');
  return climb(node, stepsThen) === earlier.root && climb(node, steps) === later.root;
}

/** From the last leaf of the earlier log up to the largest complete subtree that ends with it. */
function completeSubtree(place: number, last: number): [place: number, last: number] {
  return place % 2 === 0 ? [place, last] : completeSubtree(parent(place), parent(last));
}
