/** How a label or a meaning was come by: read in the source named, read where another repeats it, or recalled. */
export type TermBasis = 'read' | 'read-secondary' | 'memory';

/** One word of the trade: what it is called, what it means in our own words, and how sure that is. */
export interface Term {
  /** What documents carry; never changes. */
  readonly slug: string;
  readonly label: string;
  readonly definition: string;
  readonly source: string;
  /** Of the label, and of its place in the list. */
  readonly basis: TermBasis;
  readonly definitionBasis: TermBasis;
}
