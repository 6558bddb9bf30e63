import { type ListedWord, listWords } from './listed-terms.js';

const RULE = '33 CFR 174.19(a)(6)';
const MINIMUM = '33 CFR 173.57(b)(21)';
const ALABAMA = 'Alabama MAI-9 (11/18)';
const GLOSSARY = 'California boating safety report 2004, glossary';
const RECALLED = 'The federal form CG-3865, recalled: check the form';

/** What a vessel is for, as its certificate of number says; the fleet of a rental business is "rent or lease". */
export const primaryOperations: readonly ListedWord[] = listWords(RULE, 'read', [
  'Charter fishing',
  'Commercial fishing',
  'Commercial passenger carrying',
  'Dealer or manufacturer demonstration',
  'Other commercial operation',
  'Pleasure',
  'Rent or lease',
]);

/** What the vessel was doing. The rule itself names cruising, drifting, fishing, hunting, skiing, racing and other. */
export const operations: readonly ListedWord[] = [
  ...listWords(MINIMUM, 'read', ['Cruising', 'Drifting']),
  ...listWords(GLOSSARY, 'read', ['At anchor', 'Maneuvering']),
  ...listWords(ALABAMA, 'read', [
    'Approaching dock',
    'Being towed',
    'Changing direction',
    'Launching or loading',
    'Rowing or paddling',
    'Tied to dock or mooring',
    'Towing a boat',
  ]),
  ...listWords(RECALLED, 'memory', ['Changing speed', 'Towing a person', 'Sailing', 'Idling']),
  ...listWords(MINIMUM, 'read', ['Other']),
];

/** What the people were doing. */
export const activities: readonly ListedWord[] = [
  ...listWords(MINIMUM, 'read', ['Fishing', 'Hunting', 'Skiing', 'Racing']),
  ...listWords(ALABAMA, 'read', [
    'Commercial activity',
    'Fishing tournament',
    'Recreational cruising',
    'Starting engine',
    'Swimming, snorkeling, scuba diving',
    'Water skiing or tubing',
  ]),
  ...listWords(RECALLED, 'memory', ['Wake sports', 'Whitewater', 'Making repairs', 'Fueling']),
  ...listWords(MINIMUM, 'read', ['Other']),
];
