import { servedPaper as en } from './en/served-paper.js';
import { servedPaper as es } from './es/served-paper.js';
import { speak } from './speak.js';

export const servedPaper = speak(en, es);
