import { renewal as en } from './en/renewal.js';
import { speak } from './speak.js';

export const renewal = speak(en);
