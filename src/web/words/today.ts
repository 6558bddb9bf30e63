import { today as en } from './en/today.js';
import { today as es } from './es/today.js';
import { speak } from './speak.js';

export const today = speak(en, es);
