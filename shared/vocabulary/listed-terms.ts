import type { TermBasis } from './term.js';

/** A word of a list that has no meaning beyond itself, or whose meaning its label tells. */
export interface ListedWord {
  /** What documents carry; never changes. */
  readonly slug: string;
  readonly label: string;
  readonly source: string;
  readonly basis: TermBasis;
  /** What it stands together with, where the source sorts its list. */
  readonly group?: string;
}

/**
 * Words of one source, with their slugs.
 * @example listWords('A form', 'read', ['Tied to dock']) // [{ slug: 'tied-to-dock', label: 'Tied to dock', … }]
 */
export function listWords(
  source: string,
  basis: TermBasis,
  labels: readonly string[],
  group?: string,
): ListedWord[] {
  return labels.map((label) => ({
    slug: label
      .toLowerCase()
      .replaceAll(/[^a-z0-9]+/g, '-')
      .replaceAll(/^-|-$/g, ''),
    label,
    source,
    basis,
    ...(group === undefined ? {} : { group }),
  }));
}
