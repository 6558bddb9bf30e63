/**
 * How something is known: somebody of ours saw it, was told it, read it off an instrument or a paper, or it was
 * computed from other facts.
 */
export type HowKnown = 'saw' | 'told' | 'read-off' | 'computed';

export const HOW_KNOWN: readonly HowKnown[] = ['saw', 'told', 'read-off', 'computed'];

/** A fact that matters, with where it came from. It is changed, masked and withdrawn as one. */
export interface Known<T> {
  value: T;
  known: HowKnown;
  /** Who saw it or told it, or which instrument or paper it was read off. */
  by?: string;
  /** When we learned it (RFC 3339). */
  learnedAt?: string;
}

/**
 * The value of a fact, undefined while nobody has given one.
 * @example valueOf({ value: 'yes', known: 'saw' }) // 'yes'
 */
export function valueOf<T>(fact: Known<T> | undefined): T | undefined {
  return fact?.value;
}
