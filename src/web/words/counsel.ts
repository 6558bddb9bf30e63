import { counsel as en } from './en/counsel.js';
import { speak } from './speak.js';

export const counsel = speak(en);
