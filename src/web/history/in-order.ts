import { fieldWords, starredPath } from '../../../shared/record/field-words/tell-field.js';
import { language } from '../words/speak.js';

/**
 * Fields of a section in the order in which its words list them, as a person would ask them, and those of one thing
 * beside each other; what has no word comes last.
 */
export function inOrder<One>(section: string, all: readonly One[], pathOf: (one: One) => string): One[] {
  const { sections } = fieldWords(language());
  const words = Object.hasOwn(sections, section) ? sections[section as keyof typeof sections].fields : {};
  const fields = Object.keys(words);
  const things = [...new Set(all.map((one) => parentOf(pathOf(one))))];
  const place = (one: One): [thing: number, field: number] => {
    const path = pathOf(one);
    const field = fields.indexOf(starredPath(section, path));
    return [things.indexOf(parentOf(path)), field === -1 ? fields.length : field];
  };
  return all
    .map((one) => ({ one, place: place(one) }))
    .toSorted((a, b) => a.place[0] - b.place[0] || a.place[1] - b.place[1])
    .map(({ one }) => one);
}

const parentOf = (path: string): string => path.slice(0, path.lastIndexOf('/'));
