import { unsent as en } from './en/unsent.js';
import { unsent as es } from './es/unsent.js';
import { speak } from './speak.js';

export const unsent = speak(en, es);
