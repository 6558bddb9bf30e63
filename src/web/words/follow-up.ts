import { followUp as en } from './en/follow-up.js';
import { followUp as es } from './es/follow-up.js';
import { speak } from './speak.js';

export const followUp = speak(en, es);
