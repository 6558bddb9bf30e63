import { requests as en } from './en/requests.js';
import { speak } from './speak.js';

export const requests = speak(en);
