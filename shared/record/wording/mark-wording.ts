import type { FieldLanguage } from '../field-words/tell-field.js';
import { WORDING_ASKS } from './wording-asks.js';
import { ENGLISH_TERMS, SPANISH_TERMS, type WordingKind, type WordingTerm } from './wording-terms.js';

/** A phrase that blames, guesses or judges, as it stands in the text. */
export interface WordingMark {
  /** From here up to, and not with, `end`: places in the text in UTF-16 units. */
  readonly start: number;
  readonly end: number;
  readonly said: string;
  readonly kind: WordingKind;
  /** What was seen instead: a question in the language of the reader. */
  readonly ask: string;
}

/**
 * The phrases of a text that blame, guess or say what the law makes of it, in the order of the text, none over another.
 * English and Spanish are both looked for, since people mix them. It is an aid for whoever is writing: nothing is
 * changed, nothing is kept, and a text without marks is no better than one with them.
 * @example
 * markWording('He was careless.', 'en')
 * // [{ start: 7, end: 15, said: 'careless', kind: 'blame', ask: 'What was seen? …' }]
 */
export function markWording(text: string, language: FieldLanguage): WordingMark[] {
  const found = MATCHERS.flatMap(({ term, matcher }) =>
    [...text.matchAll(matcher)].map((match) => ({
      start: match.index,
      end: match.index + match[0].length,
      said: match[0],
      kind: term.kind,
      ask: WORDING_ASKS[language][term.ask],
    })),
  );
  // The longer phrase says more: "must have been drunk" is two, "way too fast" is one.
  found.sort((one, other) => one.start - other.start || other.end - one.end);
  return found.filter((mark, place) => found.slice(0, place).every(({ end }) => end <= mark.start));
}

const MATCHERS = [...ENGLISH_TERMS, ...SPANISH_TERMS].map((term) => ({ term, matcher: matcherOf(term) }));

/** `\b` knows no accents. Any apostrophe is one, and words may stand on two lines. */
function matcherOf({ phrases }: WordingTerm): RegExp {
  const any = phrases.map((phrase) => phrase.replaceAll(' ', '\\s+')).join('|');
  return new RegExp(`(?<![\\p{L}\\p{N}])(?:${any})(?![\\p{L}\\p{N}])`, 'giu');
}
