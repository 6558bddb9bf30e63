import { facts as en } from './en/facts.js';
import { facts as es } from './es/facts.js';
import { speak } from './speak.js';

export const facts = speak(en, es);
