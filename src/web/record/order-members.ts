import { kindQuestions } from '../../../shared/record/kind-questions.js';
import { starredPath } from '../../../shared/record/field-words/tell-field.js';
import { membersOf, type Member, type Shape } from '../../../shared/wire/record-members.js';
import { ASKED_FIRST, type WrittenSection } from './asked-first.js';

/** A member of a section where it stands. */
export interface PlacedMember {
  readonly name: string;
  readonly path: string;
  readonly member: Member;
}

export interface OrderedMembers {
  /** What this kind of craft calls for. */
  readonly ofKind: readonly PlacedMember[];
  /** Open: what is asked first, and what the official report lacks. */
  readonly first: readonly PlacedMember[];
  /** Values that are one touch away. */
  readonly more: readonly PlacedMember[];
  /** Parts with a title of their own. */
  readonly parts: readonly PlacedMember[];
  readonly lists: readonly PlacedMember[];
}

/**
 * The members of a class in the order in which they are asked.
 * @param under path at which an object of the class stands
 * @param types slugs of the craft that it is about
 * @param lacking paths that the official report lacks
 */
export function orderMembers(
  section: WrittenSection,
  shape: Shape,
  under: string,
  types: readonly string[],
  lacking: ReadonlySet<string>,
): OrderedMembers {
  const all = [...membersOf(shape)]
    .filter(([name]) => name !== 'id')
    .map(([name, member]) => ({ name, member, path: `${under}/${name}` }));
  const rank = (list: readonly string[], path: string): number => list.indexOf(starredPath(section, path));
  const kinds = kindQuestions(section, types);
  const firsts = ASKED_FIRST[section];
  const values = all.filter(({ member }) => 'rule' in member);
  const ofKind = values.filter(({ path }) => rank(kinds, path) >= 0);
  const others = values.filter(({ path }) => rank(kinds, path) < 0);
  const isFirst = ({ path }: PlacedMember): boolean => rank(firsts, path) >= 0 || lacking.has(path);
  const byRank = (one: PlacedMember, other: PlacedMember): number => place(one) - place(other);
  const place = ({ path }: PlacedMember): number => {
    const found = rank(firsts, path);
    return found < 0 ? firsts.length : found;
  };
  return {
    ofKind: ofKind.sort((one, other) => rank(kinds, one.path) - rank(kinds, other.path)),
    first: others.filter(isFirst).sort(byRank),
    more: others.filter((one) => !isFirst(one)),
    parts: all.filter(({ member }) => member.kind === 'part'),
    lists: all.filter(({ member }) => member.kind === 'items'),
  };
}
