import { shiftHandOver as en } from './en/shift-hand-over.js';
import { shiftHandOver as es } from './es/shift-hand-over.js';
import { speak } from './speak.js';

export const shiftHandOver = speak(en, es);
