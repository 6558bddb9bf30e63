import { whatToSay as en } from './en/what-to-say.js';
import { whatToSay as es } from './es/what-to-say.js';
import { speak } from './speak.js';

export const whatToSay = speak(en, es);
