import { fleet as en } from './en/fleet.js';
import { fleet as es } from './es/fleet.js';
import { speak } from './speak.js';

export const fleet = speak(en, es);
