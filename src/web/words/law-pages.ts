import { lawPages as en } from './en/law-pages.js';
import { speak } from './speak.js';

export const lawPages = speak(en);
