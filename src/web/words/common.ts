import { common as en } from './en/common.js';
import { common as es } from './es/common.js';
import { speak } from './speak.js';

export const common = speak(en, es);
