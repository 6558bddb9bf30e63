import { call as en } from './en/call.js';
import { call as es } from './es/call.js';
import { speak } from './speak.js';

export const call = speak(en, es);
