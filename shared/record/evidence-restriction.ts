import { valueOf } from '../call/known.js';
import type { EvidenceFile } from './evidence-section.js';
import type { PeopleSection } from './people-section.js';

/**
 * Whether only managers, administrators and counsel see a file. Unless somebody decided it, the original of a statement
 * is restricted, and so is every picture that may show somebody who died: while nobody said whom it shows, it may.
 * @example evidenceIsRestricted(photoOfNobodySaid, { people: [{ id: 'p1', outcome: died }] }) // true
 */
export function evidenceIsRestricted(
  { kind, about: { restricted, statement, people: shown } }: Pick<EvidenceFile, 'kind' | 'about'>,
  { people = [] }: PeopleSection,
): boolean {
  if (restricted !== undefined) return restricted;
  if (statement !== undefined) return true;
  const dead = people.filter(({ outcome }) => valueOf(outcome) === 'died').map(({ id }) => id);
  if (shown !== undefined) return shown.some((id) => dead.includes(id));
  return dead.length > 0 && kind !== 'document';
}
