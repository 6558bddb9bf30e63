import { STATE_NAMES } from '../place/state-codes.js';
import { findCasualtyType } from '../vocabulary/casualty-types.js';
import { findBeyondFirstAid, findFirstAid } from '../vocabulary/treatments.js';
import {
  engineDrives,
  findVesselType,
  fuels,
  hullMaterials,
  type ListedTerm,
  propulsions,
} from '../vocabulary/vessel-types.js';
import type { TermList } from './report-form.js';

/**
 * A slug in words; what is no slug of the list stays as it was said.
 * @example tellTerm('pontoon-boat', 'vessel-types') // 'Pontoon boat'
 * @example tellTerm('a big one', 'vessel-types') // 'a big one'
 */
export function tellTerm(text: string, terms: TermList | undefined): string {
  return (terms && FINDERS[terms](text)) ?? text;
}

const inList =
  (list: readonly ListedTerm[]) =>
  (text: string): string | undefined =>
    list.find(({ slug }) => slug === text)?.label;

const FINDERS: Readonly<Record<TermList, (text: string) => string | undefined>> = {
  words: (text) => (/^[a-z]+(-[a-z]+)*$/.test(text) ? sentence(text.replaceAll('-', ' ')) : undefined),
  states: (text) => STATE_NAMES[text],
  'vessel-types': (text) => findVesselType(text)?.label,
  'hull-materials': inList(hullMaterials),
  propulsions: inList(propulsions),
  'engine-drives': inList(engineDrives),
  fuels: inList(fuels),
  'casualty-types': (text) => findCasualtyType(text)?.label,
  treatments: (text) => findFirstAid(text)?.label ?? findBeyondFirstAid(text)?.label,
};

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
