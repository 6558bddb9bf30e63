import { starredPath } from '../../../shared/record/field-words/tell-field.js';
import { lights, visibilities, waterConditions, weathers } from '../../../shared/vocabulary/conditions.js';
import { contributingFactors } from '../../../shared/vocabulary/contributing-factors.js';
import { activities, operations } from '../../../shared/vocabulary/operations.js';
import { experienceBands } from '../../../shared/vocabulary/people-terms.js';

const labels = (words: readonly { readonly label: string }[]): readonly string[] => [
  ...new Set(words.map(({ label }) => label)),
];

/** Words that the forms know; they go out in English, and anything else may be written. */
const WORDS: Readonly<Record<string, readonly string[]>> = {
  'conditions:/weather': labels(weathers),
  'conditions:/water': labels(waterConditions),
  'conditions:/visibility': labels(visibilities),
  'conditions:/light': labels(lights),
  'craft:/craft/*/operation': labels(operations),
  'craft:/craft/*/activity': labels(activities),
  'people:/people/*/experience': labels(experienceBands),
  'account:/contributingFactors': labels(contributingFactors),
};

/** What is offered while somebody types in a field; nothing where no list has words for it. */
export function suggestionsFor(section: string, path: string): { suggestions?: readonly string[] } {
  const suggestions = WORDS[`${section}:${starredPath(section, path)}`];
  return suggestions === undefined ? {} : { suggestions };
}
