import type { FieldWords } from './en.js';
import { call } from './es/call.js';
import { craft, damage } from './es/craft.js';
import { contacts, incident, statements, timeline } from './es/log.js';
import { people } from './es/people.js';
import { account, conditions, scene, timeAndPlace } from './es/place.js';
import { checkIn, rental } from './es/rental.js';
import { authorities, emergencyResponse } from './es/response.js';
import { values } from './es/values.js';
import { vocabulary } from './es/vocabulary.js';

export const words: FieldWords = {
  vocabulary,
  sections: {
    call,
    'time-and-place': timeAndPlace,
    account,
    conditions,
    scene,
    'emergency-response': emergencyResponse,
    craft,
    people,
    damage,
    rental,
    authorities,
    statements,
    contacts,
    timeline,
    'check-in': checkIn,
    incident,
  },
  values,
  units: {
    dollars: 'dólares de EE. UU.',
    hours: 'horas',
    days: 'días',
    years: 'años',
    people: 'personas',
    times: 'veces',
    pieces: 'unidades',
    metres: 'metros',
    sheet: 'centésimas de media hoja',
    degrees: 'grados verdaderos',
  },
  id: 'Marca en la lista',
  parts: {
    by: 'Quién lo vio o contó, o de qué se leyó',
    learnedAt: 'Lo supimos',
    give: (minutes) => `unos ${minutes} min más o menos`,
    between: (from, until) => `entre ${from} y ${until}`,
    within: (metres) => `con ${metres} m de margen`,
    range: (low, high) => `de ${low} a ${high}`,
  },
};
