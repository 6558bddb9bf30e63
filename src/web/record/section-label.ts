import type { SectionName } from '../../../shared/record/incident-record.js';
import { fieldLabel } from '../../../shared/record/field-words/tell-field.js';
import { language } from '../words/speak.js';
import type { JsonObject } from '../../../shared/record/json-value.js';
import { itemsAt } from './edit-document.js';
import { nameItem } from './name-item.js';

/** `sectionLabelOf('people', '/people', 2)` is `Person 2`. */
export function sectionLabelOf(section: SectionName, list: string, number: number): string {
  return `${fieldLabel(section, `${list}/*`, language()) ?? ''} ${number}`.trim();
}

/**
 * What a field is called for somebody who does not see where it stands: with the item that it is about.
 * @example fullLabel('people', document, '/people/p1/age') // 'Ann: Age'
 */
export function fullLabel(section: SectionName, document: JsonObject, path: string): string {
  const tokens = path.split('/').slice(1);
  const parts: string[] = [];
  let at = '';
  for (const token of tokens) {
    const items = itemsAt(document, at);
    const place = items.findIndex(({ id }) => id === token);
    const item = items[place];
    if (item !== undefined)
      parts.push(nameItem(item, sectionLabelOf(section, at, place + 1), NOTHING_LISTED));
    at = `${at}/${token}`;
  }
  const own = fieldLabel(section, path, language());
  return [...parts, ...(own === undefined || tokens.length === 0 ? [] : [own])].join(': ');
}

const NOTHING_LISTED = { craft: [], people: [], officers: [], lines: [], fleet: [], places: [] };
