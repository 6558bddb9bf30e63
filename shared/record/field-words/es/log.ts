import type {
  contacts as contactsEn,
  incident as incidentEn,
  statements as statementsEn,
  timeline as timelineEn,
} from '../en/log.js';

export const statements: typeof statementsEn = {
  title: 'Declaraciones',
  lead: 'Lo que dijo cada persona, en sus palabras.',
  fields: {
    '/statements': 'Declaraciones',
    '/statements/*': 'Declaración',
    '/statements/*/person': 'Cuál de las personas',
    '/statements/*/name': 'Nombre, si no está anotada',
    '/statements/*/takenBy': 'Quién la tomó',
    '/statements/*/startedAt': 'Empezó',
    '/statements/*/endedAt': 'Terminó',
    '/statements/*/place': 'Dónde se tomó',
    '/statements/*/present': 'Quién más estaba',
    '/statements/*/language': 'Idioma',
    '/statements/*/interpreter': 'Intérprete',
    '/statements/*/words': 'Las palabras',
    '/statements/*/translation': 'Traducción',
    '/statements/*/readBack': '¿Se le leyó?',
    '/statements/*/signed': '¿Firmada?',
    '/statements/*/original': 'Dónde está el papel o la grabación',
    '/statements/*/copyGiven': '¿Recibió una copia?',
    '/statements/*/copyGivenAt': 'Cuándo la recibió',
    '/statements/*/refused': '¿Se negó?',
    '/statements/*/whyRefused': 'Por qué se negó',
    '/statements/*/addenda': 'Correcciones',
    '/statements/*/addenda/*': 'Corrección',
    '/statements/*/addenda/*/at': 'Cuándo',
    '/statements/*/addenda/*/by': 'De quién son las palabras',
    '/statements/*/addenda/*/takenBy': 'Quién las escribió',
    '/statements/*/addenda/*/words': 'Las palabras de la corrección',
  },
  help: {
    '/statements/*/words': 'Como se dijeron o escribieron, en ese idioma. Se quedan como están.',
    '/statements/*/translation': 'Junto a las palabras, nunca en su lugar.',
  },
};

export const contacts: typeof contactsEn = {
  title: 'Conversaciones después',
  lead: 'Quién habló con quién desde entonces, y qué se prometió o exigió.',
  fields: {
    '/contacts': 'Conversaciones, cartas y mensajes',
    '/contacts/*': 'Conversación',
    '/contacts/*/at': 'Cuándo',
    '/contacts/*/party': 'Con quién',
    '/contacts/*/name': 'Nombre',
    '/contacts/*/person': 'Cuál de las personas',
    '/contacts/*/speaksFor': 'Por quién habla',
    '/contacts/*/channel': 'Cómo',
    '/contacts/*/direction': 'Quién la empezó',
    '/contacts/*/by': 'Quién de nosotros',
    '/contacts/*/summary': 'Qué se dijo, en breve',
    '/contacts/*/writtenDemand': '¿Una reclamación por escrito?',
    '/contacts/*/lawyerSpeaks': '¿Habla un abogado por esa persona?',
    '/contacts/*/paper': 'Dónde se guarda la carta',
    '/contacts/*/promised': 'Qué prometimos',
    '/contacts/*/promisedBy': 'Para cuándo',
  },
  help: {
    '/contacts/*/writtenDemand':
      'Puede ser la primera reclamación, desde la que corren plazos. Avise hoy al encargado.',
    '/contacts/*/lawyerSpeaks': 'Entonces ya no se envía nada automático a esa persona.',
  },
};

export const timeline: typeof timelineEn = {
  title: 'Minuto a minuto',
  lead: 'Líneas como se anotaron, con la radio.',
  fields: {
    '/entries': 'Líneas',
    '/entries/*': 'Línea',
    '/entries/*/at': 'Cuándo',
    '/entries/*/what': 'Qué',
    '/entries/*/by': 'Quién lo anotó',
    '/entries/*/radioChannel': 'Canal de radio',
    '/entries/*/speaker': 'Quién habló',
    '/entries/*/spokenTo': 'A quién',
  },
  help: { '/entries/*/what': 'Lo que se vio, se hizo o se oyó, con la hora que era.' },
};

export const incident: typeof incidentEn = {
  title: 'Incidente',
  lead: 'Lo que el propio servicio dice de él.',
  fields: {
    '/reference': 'Referencia',
    '/openedAt': 'Abierto',
    '/status': 'Abierto o cerrado',
    '/timeZone': 'Zona horaria del negocio',
    '/sameEventAs': 'El mismo suceso que',
  },
  help: {},
};
