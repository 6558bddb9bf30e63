import { law as en } from './en/law.js';
import { speak } from './speak.js';

export const law = speak(en);
