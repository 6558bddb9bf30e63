import { officer as en, otherOperator as otherEn, sheetTerms as english } from './en/officer.js';
import { officer as es, otherOperator as otherEs, sheetTerms as spanish } from './es/officer.js';
import { language, speak } from './speak.js';

export { onSheet } from './en/officer.js';
export const officer = speak(en, es);
export const otherOperator = speak(otherEn, otherEs);

/** A term of a sheet in English, as whoever is given it reads that, and beside it in the language of whoever gives it. */
export function sheetTerm(name: keyof typeof english): string {
  return language() === 'es' ? `${english[name]} · ${spanish[name]}` : english[name];
}
