import type { CollectWords } from '../en/collect.js';

export const collect: CollectWords = {
  title: 'Un paquete para usted',
  lead: 'Indique la clave que le dieron por otra vía que el correo.',
  passcode: 'Clave',
  passcodeHint: 'Diez letras y cifras; no importan las mayúsculas, los espacios ni el guion.',
  missing: 'Indique la clave.',
  wrong: (left) =>
    `Esa no es la clave: ${left === 1 ? 'queda 1 intento' : `quedan ${left} intentos`} antes de que el enlace se bloquee.`,
  open: 'Abrir',
  opensUntil: (until) => `El enlace abre hasta ${until}.`,
  over: 'Ha pasado media hora: indique la clave otra vez.',
  loggedNote: 'Queda anotado que usted mira y descarga, y quien lo envió lo ve.',
  from: (sender) => `De ${sender}`,
  to: 'Para',
  why: 'Motivo',
  about: 'Sobre',
  incident: (reference) => `Incidente ${reference}`,
  made: 'Hecho',
  until: 'Abre hasta',
  files: 'Archivos',
  head: 'Cabeza del registro',
  headAbout: 'Guárdela: con ella podrá mostrar más tarde que no se cambió lo que decía el registro.',
  download: 'Descargar el paquete (ZIP)',
  downloadNote:
    'Durante media hora sin la clave. Si la descarga se corta, pulse otra vez: empieza de nuevo, y solo una completa cuenta como recogida.',
  downloadNoteSignedIn:
    'Si la descarga se corta, pulse otra vez: empieza de nuevo, y solo una completa cuenta como recogida.',
  check: 'Comprobar que está completo y sin cambios, sin enviarlo a ninguna parte',
  nothing: 'Aquí no se abre nada',
  closed: {
    expired: 'El enlace ha vencido: pida uno nuevo a quien lo envió.',
    revoked: 'El enlace fue retirado: pregunte a quien lo envió.',
    locked:
      'El enlace está bloqueado tras demasiadas claves equivocadas, y quien lo envió puede verlo: pídale uno nuevo.',
    never: 'No hay nada que recoger en esta dirección: quizá se cortó. Abra completo el enlace del correo.',
  },
  counsel: {
    lead: 'Contiene notas que pidió un abogado, y se abre solo para ese abogado.',
    signIn: 'Entre como el abogado a quien se envió',
    wrongRole: (name) =>
      `Aquí ha entrado ${name}, que no es abogado de este incidente. Se abre solo para el abogado a quien se envió.`,
    signOut: 'Salir',
    as: (name) => `Ha entrado ${name}.`,
  },
};
