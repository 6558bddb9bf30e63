import { type ListedWord, listWords } from './listed-terms.js';

const DEATHS = 'Released federal accident data 1995 to 2012, table of deaths';
const DATA_NOTES = 'Public notes on the released federal accident data';
const RECALLED = 'The federal form CG-3865, recalled: check the form';

/** An examiner says it; until then it is pending. */
export const causesOfDeath: readonly ListedWord[] = [
  ...listWords(DEATHS, 'read', [
    'Drowning',
    'Trauma',
    'Cardiac arrest',
    'Carbon monoxide poisoning',
    'Unknown',
  ]),
  ...listWords(RECALLED, 'memory', ['Hypothermia', 'Other']),
];

/** Hours on this kind of vessel. */
export const experienceBands: readonly ListedWord[] = [
  ...listWords(RECALLED, 'memory', ['Under 10 hours']),
  ...listWords(DATA_NOTES, 'read-secondary', [
    '10 to 100 hours',
    '101 to 500 hours',
    'Over 500 hours',
    'Unknown',
  ]),
];
