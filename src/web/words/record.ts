import { record as en } from './en/record.js';
import { record as es } from './es/record.js';
import { speak } from './speak.js';

export const record = speak(en, es);
