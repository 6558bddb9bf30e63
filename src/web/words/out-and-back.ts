import { outAndBack as en } from './en/out-and-back.js';
import { outAndBack as es } from './es/out-and-back.js';
import { speak } from './speak.js';

export const outAndBack = speak(en, es);
