import { timeLeft } from '../../../shared/time/tell-time.js';
import { language } from '../words/speak.js';

/** What is left until an instant, in the language of the reader: `12 min left`, `overdue by 1 h 5 min`. */
export function tellLeft(instant: string, now: number): string {
  const left = timeLeft(instant, now);
  if (language() === 'en') return left;
  const span = left
    .replace('overdue by ', '')
    .replace(' left', '')
    .replace(/\bdays?\b/, (days) => (days === 'day' ? 'día' : 'días'));
  return left.startsWith('overdue') ? `atrasada ${span}` : `quedan ${span}`;
}
