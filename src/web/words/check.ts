import { check as en } from './en/check.js';
import { speak } from './speak.js';

export const check = speak(en);
