import { nodeHash } from './merkle-log.js';

/** One hash of a proof and the side of the way on which it lies. */
export interface Step {
  readonly sibling: string;
  readonly side: 'left' | 'right';
}

/**
 * On which side each hash of a proof lies, on the way from the node at `place` to the root, where `last` is the
 * place of the last node on the same level (both from 0; RFC 9162 sections 2.1.3.2 and 2.1.4.2, whose fn and sn
 * they are). Undefined when the proof is too short or too long for the way.
 * @example stepsToRoot(2, 2, [ab]) // [{ sibling: ab, side: 'left' }]: the third of three leaves
 */
export function stepsToRoot(place: number, last: number, proof: readonly string[]): Step[] | undefined {
  const steps: Step[] = [];
  for (const sibling of proof) {
    if (last === 0) return undefined;
    // A last node without a partner is carried up as it is, until it is the right one of a pair.
    while (place % 2 === 0 && place === last) [place, last] = [parent(place), parent(last)];
    steps.push({ sibling, side: place % 2 === 1 ? 'left' : 'right' });
    [place, last] = [parent(place), parent(last)];
  }
  return last === 0 ? steps : undefined;
}

/**
 * The hash reached from a node by the steps.
 * @example climb(c, [{ sibling: ab, side: 'left' }]) // nodeHash(ab, c)
 */
export function climb(node: string, steps: readonly Step[]): string {
  return steps.reduce(
    (hash, { sibling, side }) => (side === 'left' ? nodeHash(sibling, hash) : nodeHash(hash, sibling)),
    node,
  );
}

/** Place of the node above: `parent(5)` is 2. Not a bit shift, which would cut a number beyond 32 bits. */
export function parent(place: number): number {
  return Math.floor(place / 2);
}
