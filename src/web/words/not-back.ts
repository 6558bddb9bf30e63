import { notBack as en } from './en/not-back.js';
import { notBack as es } from './es/not-back.js';
import { speak } from './speak.js';

export const notBack = speak(en, es);
