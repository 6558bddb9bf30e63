import type { OverviewWords } from '../en/overview.js';

export const overview: OverviewWords = {
  title: (reference) => `Incidente ${reference}`,
  titleWithout: 'Incidente',
  status: { open: 'Abierto', closed: 'Cerrado' },
  opened: (time) => `abierto ${time}`,
  notSaid: 'Aún no se ha dicho',
  known: 'Lo que se sabe',
  what: 'Qué',
  when: 'Cuándo',
  where: 'Dónde',
  craft: 'Embarcaciones',
  people: 'Personas',
  told: 'Primera llamada',
  person: 'Alguien, aún sin nombre',
  duties: 'Lo que pide la ley',
  dutyCount: (word, count) => `${count} ${word}`,
  outcomes: {
    required: 'obligatorios',
    undetermined: 'aún no se puede decir',
    'not-required': 'no obligatorios con estos hechos',
  },
  undecided: (count) =>
    count === 1 ? 'Nadie ha decidido sobre 1 de ellos.' : `Nadie ha decidido sobre ${count} de ellos.`,
  noDuties: 'Aún no se ha determinado nada.',
  openDuties: 'Abrir los deberes',
  sections: 'El expediente',
  sectionsLead: 'En cualquier orden, por quien sepa. Cada parte dice qué le falta aún al informe oficial.',
  lacks: (count) =>
    count === 1 ? 'Al informe oficial le falta 1 línea' : `Al informe oficial le faltan ${count} líneas`,
  lackState: { missing: 'Falta', unknown: 'No se sabe' },
  version: { none: 'Nadie ha escrito aquí', begun: 'Empezado', finished: 'Terminado' },
  by: (person, time) => `${person}, ${time}`,
  aDevice: 'un dispositivo compartido',
  writing: 'Usted empezó a escribir aquí; aún sin guardar',
  onlyHere: 'Guardado en este teléfono, aún no enviado',
  pages: 'Más sobre este incidente',
};
