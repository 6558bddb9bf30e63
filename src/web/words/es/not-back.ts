import type { NotBackWords } from '../en/not-back.js';

export const notBack: NotBackWords = {
  title: (unit) => `No volvió: ${unit}`,
  titleWithout: 'No volvió',
  opened: (time, who) => `Abierto a las ${time} por ${who}`,
  openedAlone: (time) => `Abierto a las ${time}`,
  zone: (zone) => `Horas según ${zone}.`,
  toList: 'Salidas y regresos',
  deviceLead:
    'Nadie inició sesión en este teléfono: aquí se pueden marcar las horas. Los nombres, los números y la hoja de búsqueda se ven después de iniciar sesión.',
  unknownHere: {
    title: 'No volvió',
    text: 'Este teléfono no conoce esta búsqueda. Inicie sesión o ábrala desde la lista.',
  },
  about: {
    opened: (unit) => `${unit} no volvió`,
    stamped: (rung) => `Marcado: ${rung}`,
    undone: (rung) => `Retirado: ${rung}`,
    incident: (unit) => `${unit} pasa a ser un incidente`,
  },
  sheet: {
    title: 'Hoja de búsqueda',
    read: 'Leer en voz alta',
    craft: 'Embarcación',
    registration: (number) => `matrícula ${number}`,
    colours: 'Colores',
    aboard: 'Personas',
    aboardCount: (count) => (count === 1 ? '1 persona a bordo' : `${count} personas a bordo`),
    out: 'Salió',
    due: 'Debía volver',
    seen: 'Vista por última vez',
    spoken: 'Último contacto',
    plan: 'Pensaban ir a',
    vehicle: 'Vehículo en el estacionamiento',
    fuel: 'Combustible',
    remark: 'Observación',
    unknown: 'No se sabe',
    callPerson: (name, phone) => `Llamar a ${name}, ${phone}`,
    write: 'Anotar lo que se sabe',
    seenAt: 'Vista por última vez a las',
    seenWhere: 'Dónde se vio por última vez',
    spokenAt: 'Último contacto a las',
    fuelLeft: 'Combustible que queda',
    moment: 'Indique día y hora, o déjelo en blanco.',
    save: 'Guardar la hoja',
    saved: 'Guardado.',
  },
  light: {
    title: 'Límite de la noche',
    sunset: 'Se pone el sol: nuestra lancha regresa',
    dusk: 'Termina el crepúsculo: nuestra lancha está de vuelta',
    unknown: 'No se conoce la posición de la estación: averigüe cuándo se pone el sol y busque solo de día.',
    dark: 'El sol ya se puso. Nuestra lancha no sale.',
  },
  ladder: {
    title: 'Llamadas, en orden',
    rungs: {
      'call-renter': 'Llamar al cliente',
      search: 'Buscar con nuestra lancha',
      sheriff: 'Llamar al sheriff',
      'coast-guard': 'Llamar a la Guardia Costera',
    },
    stamp: {
      'call-renter': 'Cliente llamado',
      search: 'Nuestra lancha salió',
      sheriff: 'Sheriff llamado',
      'coast-guard': 'Guardia Costera llamada',
    },
    says: ({ rung, until }) => {
      switch (rung) {
        case 'call-renter':
          return 'Llame al cliente y a todos los números de la hoja; mire si el vehículo sigue en el estacionamiento.';
        case 'search':
          return until === null
            ? 'Nuestra lancha busca solo con luz de día. Si el sol ya se puso, no sale: sheriff y Guardia Costera ahora.'
            : 'Busque con nuestra lancha hasta que se ponga el sol, y esté de vuelta al final del crepúsculo.';
        case 'sheriff':
          return 'Llame al sheriff: lea la hoja de búsqueda y anote la referencia que le den.';
        case 'coast-guard':
          return 'Llame a la Guardia Costera donde responda por estas aguas: por teléfono, o por VHF 16 si hay.';
      }
    },
    basis:
      'Los tiempos son práctica común, sin fuente. Si alguien puede estar en peligro: primero los servicios de emergencia, de inmediato.',
    by: 'hágalo antes de esa hora',
    until: (time) => `Nuestra lancha: hasta las ${time}`,
    call: (name, phone) => `Llamar a ${name}, ${phone}`,
    channel: (name, channel) => `${name}: ${channel}`,
    words: 'Qué dijeron, su referencia',
    at: (time, who) => (who === '' ? time : `${time}, ${who}`),
    again: 'Marcar otra hora',
    undo: (name, time) => `Deshacer: ${name} ${time}`,
    undoWhy: 'Se presionó por error.',
    noNumber: 'No hay un número de las estaciones en la lista: el 911 comunica con el condado.',
    call911: 'Llamar al 911',
  },
  ending: {
    title: 'Cómo terminó',
    lead: 'Nada termina por sí solo: alguien dice cómo, con nombre y hora.',
    legend: 'Terminó como',
    kinds: {
      late: 'Atrasada, volvió por su cuenta',
      'broken-down': 'Averiada',
      aground: 'Varada',
      stolen: 'Robada',
      'found-empty': 'Hallada vacía',
    },
    how: 'Dónde y cómo, quién la trajo',
    at: 'Cuándo',
    atHint: 'En blanco: ahora.',
    moment: 'Indique día y hora.',
    end: 'Terminar',
    missing: 'Elija cómo terminó.',
    ended: (how, time, who) => `Terminó ${time}, según ${who}: ${how}`,
    undoWhy: 'Se presionó por error.',
    becameIncident: 'pasó a ser un incidente',
    device: 'Cómo terminó es palabra de una persona: inicie sesión para decirlo.',
  },
  proposes: {
    title: '¿Debe pasar a ser un incidente?',
    why: (ended) =>
      ({
        aground:
          'Varar es un tipo de accidente del informe federal, y no se sabe qué pasó con la embarcación y la gente hasta que alguien pregunte.',
        stolen:
          'No se sabe quién tuvo la embarcación ni qué hizo con ella; la policía y la aseguradora pedirán un registro.',
        'found-empty':
          'Una embarcación sin su gente significa que alguien puede estar en el agua: una desaparición desde una embarcación se debe informar (33 CFR 173.55).',
      })[ended] ?? '',
    none: 'No es un incidente, porque',
    sayNone: 'No es un incidente',
    noneMissing: 'Diga por qué no lo es.',
    onlyManager: 'Un gerente o un administrador puede decir que no lo es.',
    saidNone: (who, why) => `${who} dijo que no es un incidente: ${why}`,
  },
  incident: {
    become: 'Hacerlo un incidente',
    lead: 'Si hay heridos, desaparecidos o peligro: hágalo un incidente ahora. Todo lo que se sabe va con él.',
    kept: 'Pasará a ser un incidente cuando haya señal: hasta entonces, solo en este teléfono.',
    became: 'Es un incidente.',
    open: 'Abrir el incidente',
  },
};
