import { pin as en } from './en/pin.js';
import { pin as es } from './es/pin.js';
import { speak } from './speak.js';

export const pin = speak(en, es);
