import type { Common } from '../en/common.js';

export const common: Common = {
  deskName: 'Mesa de incidentes',
  skip: 'Saltar a la página',
  pages: 'Páginas',
  morePages: 'Más',
  call: 'Pedir ayuda',
  caution: {
    help: 'Si hay heridos, desaparecidos o peligro: primero los servicios de emergencia.',
    law: 'No es asesoría legal. Confirme con la agencia estatal y con un abogado.',
    call911: 'Llamar al 911',
    vhf: 'Canal 16 de VHF',
    label: 'Emergencia',
  },
  answer: { yes: 'Sí', no: 'No', unknown: 'Aún no se sabe', 'not-applicable': 'No corresponde' },
  then: ', luego ',
  loading: 'Cargando…',
  again: 'Intentar de nuevo',
  undo: 'Deshacer',
  close: 'Cerrar',
  print: 'Imprimir',
  printed: (time, who) => `Impreso ${time} por ${who}.`,
  signIn: 'Iniciar sesión',
  signOut: 'Cerrar sesión',
  language: 'English',
  optional: 'puede dejarse en blanco',
  overdue: 'Vencido',
  trouble: {
    unreachable: 'No se pudo llegar al servicio. Revise la señal e intente de nuevo.',
    'sign-in': 'Su sesión terminó. Inicie sesión e intente de nuevo.',
    'not-yours': 'Esto no le corresponde ver ni hacer.',
    'not-there': 'No hay nada en esta dirección.',
    'changed-meanwhile': 'Otra persona lo cambió mientras usted escribía. Se guardan ambos.',
    refused: 'No fue aceptado.',
    busy: 'El servicio no puede hacerlo ahora. Intente en un momento.',
    broken: 'El servicio falló. Intente de nuevo.',
  },
  failureNumber: (number) => `Número de la falla: ${number}`,
  kept: (time) => `Sin señal. Esto es lo que este aparato guardó a las ${time}; puede haber cambiado.`,
  noPermission: {
    title: 'No le corresponde ver esto',
    text: (role) => `Su sesión es de ${role}, y esta página es para otras personas.`,
    ask: 'Si la necesita, pregunte a un administrador.',
  },
  notFound: {
    title: 'No existe esa página',
    text: 'Quizás la dirección quedó cortada. Las páginas que hay están arriba.',
  },
  chunkFailed: 'No se pudo cargar esta página. Necesita señal una vez; después abre sin ella.',
  newer: { text: 'Hay una versión más nueva.', use: 'Usarla ahora' },
  photographNotKept: 'No se pudo guardar la fotografía aquí. Consérvela en las fotos del teléfono.',
  sending: {
    waiting: 'Guardado en este aparato, aún no enviado',
    sending: 'Enviando',
    sent: (time) => `Enviado a las ${time}`,
    conflict: 'Otra persona lo cambió mientras usted escribía: se guardan ambos',
    refused: 'El servicio no lo aceptó',
    waitingCount: (count) =>
      count === 1
        ? '1 anotación está solo en este aparato'
        : `${count} anotaciones están solo en este aparato`,
    evictable:
      'Este navegador puede borrar lo guardado si le falta espacio. Envíe pronto y conserve el papel.',
    notKept: 'Este navegador no guarda nada (necesita HTTPS). Sin señal, escriba en papel.',
  },
  roles: { staff: 'personal', manager: 'gerente', administrator: 'administrador', counsel: 'abogado' },
};
