import type { FieldLanguage } from '../field-words/tell-field.js';
import type { WordingAsk } from './wording-terms.js';

/** What is asked for instead of the phrase. */
export const WORDING_ASKS: Readonly<Record<FieldLanguage, Readonly<Record<WordingAsk, string>>>> = {
  en: {
    seen: 'What was seen? Who did what, where they looked, how far apart they were.',
    drink: 'What was seen, heard or smelled? Speech, balance, cans, and who said that they drank what.',
    speed: 'What speed, and read off or told by whom? Or how far in how many seconds.',
    done: 'What was done? What should have been done is not for the record.',
    source: 'Who saw it or said it? What nobody knows stays not known.',
    cause: 'What came first, and what next? Why is for later.',
    office: 'What happened? What the law calls it is for the manager and counsel.',
  },
  es: {
    seen: '¿Qué se vio? Quién hizo qué, hacia dónde miraba, a qué distancia estaban.',
    drink: '¿Qué se vio, se oyó o se olió? El habla, el equilibrio, las latas, y quién dijo que bebió qué.',
    speed: '¿Qué velocidad, y leída o contada por quién? O qué distancia en cuántos segundos.',
    done: '¿Qué se hizo? Lo que se debió hacer no va en el expediente.',
    source: '¿Quién lo vio o lo dijo? Lo que nadie sabe queda como no sabido.',
    cause: '¿Qué fue primero y qué después? El porqué es para más tarde.',
    office: '¿Qué pasó? Cómo lo llama la ley les toca al encargado y al abogado.',
  },
};
