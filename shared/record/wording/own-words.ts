import { starredPath } from '../field-words/tell-field.js';

/** Fields in which whoever writes tells something in words of their own; all others hold what somebody else said. */
const OWN_WORDS: ReadonlySet<string> = new Set([
  'call:/overdue/endedHow',
  'time-and-place:/description',
  'account:/whatHappened',
  'account:/equipmentFailures',
  'account:/contributingFactors',
  'conditions:/hazards',
  'emergency-response:/responders/*/care',
  'craft:/craft/*/account',
  'damage:/lines/*/what',
  'contacts:/contacts/*/summary',
  'timeline:/entries/*/what',
  'check-in:/findings/*/what',
  'check-in:/found',
]);

/**
 * Whether a field holds the writer's own words, so that the wording aid may read them: never what a caller, a renter or
 * a witness said, nor what was told to the writer.
 * @param known how the writer knows it, where the field says that
 * @example isOwnWords('account', '/whatHappened', 'saw') // true
 * @example isOwnWords('account', '/whatHappened', 'told') // false
 * @example isOwnWords('statements', '/statements/s1/words', undefined) // false
 */
export function isOwnWords(section: string, path: string, known: string | undefined): boolean {
  return known !== 'told' && OWN_WORDS.has(`${section}:${starredPath(section, path)}`);
}
