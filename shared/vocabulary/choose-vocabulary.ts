import { casualtyTypes } from './casualty-types.js';
import {
  bodiesOfWater,
  forecasts,
  lights,
  visibilities,
  waterConditions,
  weathers,
  winds,
} from './conditions.js';
import { contributingFactors } from './contributing-factors.js';
import type { ListedWord } from './listed-terms.js';
import { activities, operations, primaryOperations } from './operations.js';
import { causesOfDeath, experienceBands } from './people-terms.js';
import type { Term } from './term.js';
import { beyondFirstAidTreatments, firstAidTreatments } from './treatments.js';
import { engineDrives, fuels, hullMaterials, propulsions, vesselTypes } from './vessel-types.js';

/** A word as it is offered: its meaning only where the list explains its words. */
export type OfferedWord = ListedWord & Partial<Pick<Term, 'definition' | 'definitionBasis'>>;

/** A list of words for one field, in the order in which they are offered. */
export interface VocabularyList {
  readonly id: string;
  readonly title: string;
  readonly words: readonly OfferedWord[];
}

/** The words for an occurrence of one day. */
export interface Vocabulary {
  /** Of the kinds of occurrence, after the year from which labels hold. */
  readonly version: '2013' | '2024';
  /** What is not as it should be about it; null where nothing is. */
  readonly note: string | null;
  readonly lists: readonly VocabularyList[];
}

/** Coast Guard Policy Letter 23-01 CH-1: its terms are for occurrences from this day. */
const RENAMED_FROM = '2024-01-01';

const UNREAD =
  'For occurrences from 1 January 2024 the Coast Guard renamed the kinds of occurrence (CG-BSX Policy Letter 23-01 CH-1, ' +
  'section 4). Those labels have not been read: the older ones are offered, and the agency’s form decides.';

/**
 * The words that are offered for an occurrence, by its day at its place.
 * @param day YYYY-MM-DD
 * @example chooseVocabulary('2023-12-31').version // '2013'
 * @example chooseVocabulary('2024-01-01').note // 'For occurrences from 1 January 2024 the Coast Guard renamed …'
 */
export function chooseVocabulary(day: string): Vocabulary {
  const renamed = day >= RENAMED_FROM;
  return { version: renamed ? '2024' : '2013', note: renamed ? UNREAD : null, lists: LISTS };
}

const LISTS: readonly VocabularyList[] = [
  { id: 'casualty-types', title: 'Kind of occurrence', words: casualtyTypes.map(offered) },
  { id: 'vessel-types', title: 'Type of vessel', words: vesselTypes.map(offered) },
  { id: 'hull-materials', title: 'What the hull is made of', words: hullMaterials },
  { id: 'propulsions', title: 'Propulsion', words: propulsions },
  { id: 'engine-drives', title: 'Engine drive', words: engineDrives },
  { id: 'fuels', title: 'Fuel', words: fuels },
  { id: 'primary-operations', title: 'What the vessel is for', words: primaryOperations },
  { id: 'operations', title: 'What the vessel was doing', words: operations },
  { id: 'activities', title: 'What the people were doing', words: activities },
  { id: 'contributing-factors', title: 'What contributed', words: contributingFactors },
  { id: 'water-conditions', title: 'Water', words: waterConditions },
  { id: 'winds', title: 'Wind', words: winds },
  { id: 'weathers', title: 'Weather', words: weathers },
  { id: 'visibilities', title: 'Visibility', words: visibilities },
  { id: 'lights', title: 'Light', words: lights },
  { id: 'forecasts', title: 'Forecast', words: forecasts },
  { id: 'bodies-of-water', title: 'Body of water', words: bodiesOfWater },
  { id: 'causes-of-death', title: 'Cause of death', words: causesOfDeath },
  { id: 'experience-bands', title: 'Experience of the operator', words: experienceBands },
  { id: 'first-aid', title: 'First aid', words: firstAidTreatments.map(offered) },
  {
    id: 'beyond-first-aid',
    title: 'Treatment beyond first aid',
    words: beyondFirstAidTreatments.map(offered),
  },
];

function offered({ slug, label, definition, source, basis, definitionBasis }: Term): OfferedWord {
  return { slug, label, source, basis, definition, definitionBasis };
}
