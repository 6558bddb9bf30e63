import { collect as en } from './en/collect.js';
import { collect as es } from './es/collect.js';
import { speak } from './speak.js';

export const collect = speak(en, es);
