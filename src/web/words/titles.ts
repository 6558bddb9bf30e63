import { titles as en } from './en/titles.js';
import { titles as es } from './es/titles.js';
import { speak } from './speak.js';

export const titles = speak(en, es);
