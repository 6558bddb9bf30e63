import { closingCount as en } from './en/closing-count.js';
import { closingCount as es } from './es/closing-count.js';
import { speak } from './speak.js';

export const closingCount = speak(en, es);
