import { valueOf } from '../call/known.js';
import type { CraftSection } from './craft-section.js';
import type { SectionName } from './incident-record.js';
import type { PersonRecord } from './people-section.js';

/** Fields that are asked first, by section; items of lists as a star. */
type Asked = Partial<Record<SectionName, readonly string[]>>;

/** What is asked first about each type of craft. Common practice, no source. */
const BY_TYPE: Readonly<Record<string, Asked>> = {
  'personal-watercraft': {
    craft: ['/craft/*/powerSetting', '/craft/*/throttleInTurn', '/craft/*/speed', '/craft/*/aboard'],
    people: ['/people/*/seat', '/people/*/lanyard', '/people/*/lifeJacket'],
    rental: ['/operators/*/drove', '/briefingGiven'],
  },
  'pontoon-boat': {
    craft: ['/craft/*/gatesClosed', '/craft/*/bowRiding', '/craft/*/aboard', '/craft/*/speed'],
    people: ['/people/*/seat', '/people/*/lifeJacket'],
  },
  'open-motorboat': {
    craft: ['/craft/*/bowRiding', '/craft/*/aboard', '/craft/*/beingTowed', '/craft/*/speed'],
    people: ['/people/*/seat', '/people/*/lanyard', '/people/*/lifeJacket'],
  },
  paddlecraft: {
    conditions: ['/waterTemperature', '/wind', '/waves'],
    people: ['/people/*/clothing', '/people/*/lifeJacket'],
    craft: ['/craft/*/aboard', '/craft/*/activity'],
  },
};

/**
 * What is asked first in a section, for the types of craft there are: seating order and power for personal watercraft,
 * gates for a pontoon boat, cold water for paddlers.
 * @param types slugs of the vocabulary; one that has no questions of its own adds none
 * @example kindQuestions('conditions', ['paddlecraft']) // ['/waterTemperature', '/wind', '/waves']
 */
export function kindQuestions(section: SectionName, types: readonly string[]): string[] {
  return [...new Set(types.flatMap((type) => BY_TYPE[type]?.[section] ?? []))];
}

/**
 * The types of craft that an item of a section is about: its own, that of the craft a person was on, or all there are
 * where nobody has said which.
 * @example typesAbout({ craft: [{ id: 'c1', type: { value: 'paddlecraft', known: 'saw' } }] }, { craft: 'c1' }) // ['paddlecraft']
 */
export function typesAbout(
  { craft = [] }: CraftSection,
  item: Pick<PersonRecord, 'craft'> & { id?: string } = {},
): string[] {
  const own = craft.filter(({ id }) => id === item.craft || id === item.id);
  const about = own.length > 0 ? own : craft;
  return [...new Set(about.flatMap(({ type }) => valueOf(type) ?? []))];
}
