import { reportable as en } from './en/reportable.js';
import { speak } from './speak.js';

export const reportable = speak(en);
