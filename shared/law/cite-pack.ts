import type { Citation, PackBasis, RulePack } from './rule-pack.js';

const KINDS: Readonly<Record<PackBasis, readonly Citation['kind'][]>> = {
  'read-primary': ['statute', 'regulation'],
  'read-agency': ['agency-page'],
  'read-secondary': ['secondary'],
  memory: [],
  'not-read': [],
};

/**
 * The sources on which a pack as a whole rests: of its citations those of the kind that was read, all where
 * none is of that kind. A statute that a secondary pack names for another point is no source of its triggers.
 * @example citePack(texas)[0] // 'Tex. Parks & Wild. Code 31.105 (2023 text)'
 */
export function citePack({ basis, citations }: Pick<RulePack, 'basis' | 'citations'>): string[] {
  const read = citations.filter(({ kind }) => KINDS[basis].includes(kind));
  return (read.length > 0 ? read : citations).map(({ section }) => section);
}
