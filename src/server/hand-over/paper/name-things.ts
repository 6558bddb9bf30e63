import type { PacketRecord } from '../../../../shared/hand-over/packet.js';
import type { RecordSections } from '../../../../shared/record/incident-record.js';

/** The sections as they leave: any of them, and any member of them, may be missing. */
export const sectionsOf = ({ sections }: Pick<PacketRecord, 'sections'>): Partial<RecordSections> => sections;

/** What the ids of the packet's own lists are called on paper. */
export interface Names {
  readonly craft: ReadonlyMap<string, string>;
  readonly people: ReadonlyMap<string, string>;
  readonly officers: ReadonlyMap<string, string>;
  readonly damage: ReadonlyMap<string, string>;
  readonly contacts: ReadonlyMap<string, string>;
}

/** Names as they leave; whoever leaves without a name is called by the number in the list. */
export function nameThings(record: Pick<PacketRecord, 'sections'>): Names {
  const { craft, people, authorities, damage, contacts } = sectionsOf(record);
  return {
    craft: named(craft?.craft, 'Craft', ({ name }) => name),
    people: named(people?.people, 'Person', ({ name }) => name),
    officers: named(authorities?.officers, 'Officer', ({ name, badge }) => name ?? badge),
    damage: named(damage?.lines, 'Damage', ({ what }) => what),
    contacts: named(contacts?.contacts, 'Talk', ({ name }) => name),
  };
}

/** Members that hold ids of other lists, each with where their names stand. */
const LISTS: Readonly<Record<string, keyof Names>> = {
  craft: 'craft',
  vessel: 'craft',
  of: 'people',
  person: 'people',
  renterPerson: 'people',
  patients: 'people',
  briefed: 'people',
  people: 'people',
  officer: 'officers',
  line: 'damage',
  damageLine: 'damage',
};

/** The name behind an id, where the member holds one: `nameOf(names, 'craft', 'c1')` is `'PWC 7'`. */
export function nameOf(names: Names, member: string, id: string): string | undefined {
  const list = LISTS[member];
  return list && names[list].get(id);
}

/**
 * The same text with ids of people and craft by their names: laws and tasks speak of them by id.
 * @example nameIds(names, 'For c1: the passenger (p2).') // 'For PWC 7: the passenger (Ann Lee).'
 */
export function nameIds({ craft, people }: Names, text: string): string {
  // An id without a figure could be a word of the language.
  return text.replaceAll(
    /(?<![\w-])[A-Za-z][\w-]*\d[\w-]*/g,
    (word) => craft.get(word) ?? people.get(word) ?? word,
  );
}

function named<T extends { id: string }>(
  list: readonly T[] | undefined,
  word: string,
  nameIn: (item: T) => string | undefined,
): ReadonlyMap<string, string> {
  return new Map(list?.map((item, place) => [item.id, nameIn(item) ?? `${word} ${place + 1}`]));
}
