import { lists as en } from './en/lists.js';
import { lists as es } from './es/lists.js';
import { speak } from './speak.js';

export const lists = speak(en, es);
