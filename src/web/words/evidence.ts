import { evidence as en } from './en/evidence.js';
import { evidence as es } from './es/evidence.js';
import { speak } from './speak.js';

export const evidence = speak(en, es);
