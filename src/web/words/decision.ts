import { decision as en } from './en/decision.js';
import { speak } from './speak.js';

export const decision = speak(en);
