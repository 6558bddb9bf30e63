import { type ListedWord, listWords } from './listed-terms.js';

const BOTH_FORMS = 'Alabama MAI-9 (11/18) and Texas PWD 047-L2000 (10/2010)';
const ALABAMA = 'Alabama MAI-9 (11/18)';
const TEXAS = 'Texas PWD 047-L2000 (10/2010)';

/** Under 6 in, to 2 ft, to 6 ft, over 6 ft: see the bands of each form for what is at an edge. */
export const waterConditions: readonly ListedWord[] = [
  ...listWords(BOTH_FORMS, 'read', ['Calm', 'Choppy', 'Rough', 'Very rough']),
  ...listWords(TEXAS, 'read', ['Strong current']),
];

/** The words alone: forms put them at different speeds. */
export const winds: readonly ListedWord[] = listWords(BOTH_FORMS, 'read', [
  'None',
  'Light',
  'Moderate',
  'Strong',
  'Storm',
]);

export const weathers: readonly ListedWord[] = [
  ...listWords(BOTH_FORMS, 'read', ['Clear', 'Cloudy', 'Fog', 'Rain', 'Hazy']),
  ...listWords(TEXAS, 'read', ['Snow']),
  ...listWords(ALABAMA, 'read', ['Thunderstorm']),
];

export const visibilities: readonly ListedWord[] = [
  ...listWords(BOTH_FORMS, 'read', ['Good', 'Fair', 'Poor']),
  ...listWords(TEXAS, 'read', ['None']),
];

export const lights: readonly ListedWord[] = listWords(ALABAMA, 'read', ['Dawn', 'Day', 'Dusk', 'Night']);

export const forecasts: readonly ListedWord[] = listWords(TEXAS, 'read', [
  'As forecast',
  'Not as forecast',
  'No forecast obtained',
]);

export const bodiesOfWater: readonly ListedWord[] = listWords(
  'Coast Guard boating statistics 2006, by way of the Bureau of Transportation Statistics, table 5-5',
  'read-secondary',
  [
    'Ocean or gulf',
    'Great Lakes, not their tributaries',
    'Bays, inlets, sounds, harbors',
    'Rivers, streams, creeks',
    'Lakes, ponds, reservoirs, dams, gravel pits',
    'Other or not reported',
  ],
);
