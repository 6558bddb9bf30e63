import type { UnsentWords } from '../en/unsent.js';

export const unsent: UnsentWords = {
  title: 'Solo en este aparato',
  lead: 'Escrito aquí y aún no en el servicio. Se envía solo, en este orden, en cuanto haya señal.',
  badge: (count) => `${count} sin enviar`,
  list: 'Lo que espera',
  empty: 'Nada espera: todo lo escrito en este aparato ya llegó.',
  sendNow: 'Intentar enviar ahora',
  trying: 'Buscando el servicio…',
  notReached: 'No se pudo llegar al servicio. Lo que espera queda aquí y se intenta de nuevo solo.',
  unreadable:
    'No se puede leer lo que guarda este aparato. Quizás lo tiene otra ventana: cierre las demás e intente de nuevo.',
  names: { call: 'Llamada', record: 'Expediente', note: 'Nota para la cronología' },
  part: (name, section) => `${name}: ${section}`,
  written: (when, who) => `Escrito ${when} ${who}`,
  byYou: 'por usted',
  byOther: 'por otra persona',
  byNobody: 'sin nombre elegido',
  file: (name, size) => `${name}, ${size}`,
  waitsForOpening: 'Espera: la anotación que abre el incidente no fue aceptada. Atienda esa primero.',
  waitsForPerson:
    'Se envía cuando quien lo escribió inicie sesión aquí otra vez, para que quede a su nombre. Un gerente también puede abrirlo.',
  see: 'Ver lo que dice',
  mine: 'Aquí',
  theirs: 'Ahora en el servicio',
  field: 'Qué',
  nothing: 'nada',
  conflict: 'Elija qué pasa con lo suyo.',
  openSection: 'Abrir la parte y juntar ambos',
  sendOver: 'Poner lo mío en lugar de lo otro',
  sendAgain: 'Enviarlo otra vez tal como está',
  keepNote: 'Guardar lo mío como nota del incidente',
  copy: 'Copiar el texto',
  copied: 'Copiado. Se puede pegar en cualquier lugar; también queda aquí.',
  notCopied: 'El navegador no dejó copiarlo. El texto está abajo: márquelo y cópielo a mano.',
  download: 'Guardar una copia del archivo',
  fileGone: 'El archivo ya no está en este aparato: el navegador lo borró.',
  discard: 'Desecharlo',
  noteKept: 'Guardado como nota del incidente. Se envía como todo lo demás.',
  noteText: (about, words) =>
    `${about}: escrito en un aparato a esta hora y no aceptado tal como estaba.\n${words}`,
  confirm: {
    title: '¿Desecharlo?',
    text: 'No está en ningún otro lugar. Una vez desechado, nadie puede recuperarlo.',
    others: (count) =>
      count === 1
        ? 'Otra anotación le pertenece. Queda aquí, para copiarla o desecharla aparte.'
        : `Otras ${count} anotaciones le pertenecen. Quedan aquí, para copiarlas o desecharlas una por una.`,
    yes: 'Desecharlo para siempre',
    no: 'Conservarlo',
  },
  discarded: (about) => `Desechado: ${about}.`,
};
