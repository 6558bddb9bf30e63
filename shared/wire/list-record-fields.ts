import { membersOf, type Shape } from './record-members.js';
import { SECTION_SHAPES } from './record-sections.js';

/**
 * Every field that a section can have, as section and pointer; a star stands for the id of an item of a list.
 * @example listRecordFields().includes('people:/people/*\/birthDate') // true
 */
export function listRecordFields(): string[] {
  return Object.entries(SECTION_SHAPES).flatMap(([section, shape]) =>
    fieldsOf(shape, '').map((path) => `${section}:${path}`),
  );
}

function fieldsOf(shape: Shape, under: string): string[] {
  return [...membersOf(shape)].flatMap(([name, member]) => {
    const path = `${under}/${name}`;
    if (member.kind === 'part') return fieldsOf(member.shape(), path);
    return member.kind === 'items' ? fieldsOf(member.shape(), `${path}/*`) : [path];
  });
}
