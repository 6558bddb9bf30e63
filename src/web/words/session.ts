import { session as en } from './en/session.js';
import { session as es } from './es/session.js';
import { speak } from './speak.js';

export const session = speak(en, es);
