import { register as en } from './en/register.js';
import { register as es } from './es/register.js';
import { speak } from './speak.js';

export const register = speak(en, es);
