import { isJsonObject } from '../../../shared/record/json-value.js';
import { tellRecorded } from '../look/tell-recorded.js';
import type { Item } from './edit-document.js';
import type { SectionEditor } from './section-editor.js';

/** What an item is known by, the first that it has. */
const NAMES = ['name', 'what', 'who', 'to', 'agency', 'nature', 'words', 'where', 'summary', 'by'];
const LISTED = [
  ['person', 'people'],
  ['craft', 'craft'],
] as const;
const LONGEST = 60;

/**
 * What an item of a list is called: by its own words, by whom or what it names, else by its place.
 * @example nameItem({ id: 'p1', name: 'Ann' }, 'Person 1', choices) // 'Ann'
 */
export function nameItem(item: Item, instead: string, choices: SectionEditor['choices']): string {
  for (const name of NAMES) {
    const value = item[name];
    const text = isJsonObject(value) ? value['value'] : value;
    if (typeof text === 'string' && text.trim() !== '') return cut(text);
  }
  for (const [name, list] of LISTED) {
    const found = choices[list].find(({ id }) => id === item[name]);
    if (found !== undefined) return found.name;
  }
  return instead;
}

/** What is told of an item beside its name, without opening it. */
const TOLD = [
  'at',
  'kind',
  'party',
  'type',
  'role',
  'outcome',
  'of',
  'amount',
  'made',
  'onScene',
  'drove',
  'signed',
  'from',
];
const MOST = 3;

export function tellItem(section: string, list: string, item: Item, timeZone: string): string {
  return TOLD.map((name) =>
    tellRecorded(item[name], { section, path: `${list}/${item.id}/${name}`, timeZone }),
  )
    .filter((words) => words !== '')
    .slice(0, MOST)
    .join(' · ');
}

function cut(text: string): string {
  return text.length <= LONGEST ? text : `${[...text].slice(0, LONGEST - 1).join('')}…`;
}
