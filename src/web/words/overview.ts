import { overview as en } from './en/overview.js';
import { overview as es } from './es/overview.js';
import { speak } from './speak.js';

export const overview = speak(en, es);
