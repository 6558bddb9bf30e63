import { map as en } from './en/map.js';
import { map as es } from './es/map.js';
import { speak } from './speak.js';

export const map = speak(en, es);
