import { scene as en } from './en/scene.js';
import { scene as es } from './es/scene.js';
import { speak } from './speak.js';

export const scene = speak(en, es);
