import { history as en, wholeRecord as recordEn } from './en/history.js';
import { history as es, wholeRecord as recordEs } from './es/history.js';
import { speak } from './speak.js';

export const history = speak(en, es);
export const wholeRecord = speak(recordEn, recordEs);
