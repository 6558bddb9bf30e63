import { handOver as en } from './en/hand-over.js';
import { speak } from './speak.js';

export const handOver = speak(en);
