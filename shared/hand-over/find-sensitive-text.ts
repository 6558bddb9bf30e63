import { MEDICAL_WORDS } from './sensitive-words.js';

/** What a text may give away that has a field of its own, which the profile would keep. */
export const SENSITIVE = ['medical', 'birth-date', 'reach', 'identity-paper'] as const;
export type Sensitive = (typeof SENSITIVE)[number];

export interface SensitiveWord {
  /** The kind that would keep it, were it written where it belongs. */
  readonly kind: Sensitive;
  /** As it stands in the text. */
  readonly said: string;
}

const MONTHS = 'jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec|ene|abr|ago|dic';
const DATE = [
  String.raw`(?:19|20)\d\d[-/.]\d{1,2}[-/.]\d{1,2}`,
  String.raw`\d{1,2}[-/.]\d{1,2}[-/.](?:(?:19|20)\d\d|\d\d)`,
  String.raw`\d{1,2}\.?\s+(?:de\s+)?(?:${MONTHS})\p{L}*\.?,?\s+(?:de\s+)?(?:19|20)\d\d`,
  String.raw`(?:${MONTHS})\p{L}*\.?\s+\d{1,2}(?:st|nd|rd|th)?,?\s+(?:19|20)\d\d`,
].join('|');
const BORN = String.raw`(?:\bborn\b|\bdob\b|\bd\.o\.b\.|date of birth|birth\s*da(?:y|te)|naci[oó]|nacid[ao]|fecha de nacimiento)`;

const MATCHERS: Readonly<Record<Sensitive, RegExp>> = {
  medical: new RegExp(
    String.raw`(?<![\p{L}\p{N}])(?:${MEDICAL_WORDS.map((word) => word.replace('*', String.raw`\p{L}*`)).join('|')})(?![\p{L}\p{N}])`,
    'iu',
  ),
  'birth-date': new RegExp(String.raw`${BORN}\D{0,30}(?:${DATE}|(?:19|20)\d\d(?!\d))`, 'iu'),
  reach:
    /[\w.+-]+@[\w-]+\.[\w.-]+\w|(?<!\d)(?:\+?1[ .-]?)?\(?[2-9]\d{2}\)?[ .-]{1,2}\d{3}[ .-]\d{4}(?!\d)|\+\d[\d ().-]{7,16}\d/u,
  'identity-paper':
    /(?:licen[cs]e|\blic\b|\bdln?\b|passport|licencia|pasaporte|\bid\b)[^\d\n]{0,20}[A-Z]{0,3}\d[\d -]{5,}\d/iu,
};

/** A date long enough before the occurrence to be that of a birth, without a word that says so. */
const OLD_DATE = new RegExp(String.raw`(?<![\d/.-])(?:${DATE})(?![\d/.-])`, 'giu');
const LEAST_YEARS = 2;

/**
 * What of a text looks like health, a birth date, a way to reach somebody or the number of a paper; the first of each.
 * It reads shapes and words and not meaning: it helps whoever decides, and decides nothing.
 * @param year in which it happened: a full date years before it may be somebody's birth
 * @example findSensitiveText('Born 3/14/1987, got stitches', 2026).map(({ said }) => said) // ['stitches', 'Born 3/14/1987']
 */
export function findSensitiveText(text: string, year: number): SensitiveWord[] {
  return SENSITIVE.flatMap((kind) => {
    const said =
      MATCHERS[kind].exec(text)?.[0] ?? (kind === 'birth-date' ? oldDateIn(text, year) : undefined);
    return said === undefined ? [] : [{ kind, said }];
  });
}

function oldDateIn(text: string, year: number): string | undefined {
  return [...text.matchAll(OLD_DATE)]
    .map(([date]) => date)
    .find((date) => Number(/(?:19|20)\d\d/.exec(date)?.[0] ?? year) <= year - LEAST_YEARS);
}
