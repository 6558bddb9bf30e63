import { values } from '../../../../shared/record/field-words/es/values.js';
import { vocabulary } from '../../../../shared/record/field-words/es/vocabulary.js';
import type { RegisterWords } from '../en/register.js';

export const register: RegisterWords = {
  lead: (zone) => `Las horas son las de ${zone}.`,
  search: 'Buscar en los registros',
  searchHint: 'Palabras del registro o una referencia, enteras o su comienzo.',
  searching: 'Buscando…',
  count: (found, all) =>
    found === all
      ? `${all} ${all === 1 ? 'incidente' : 'incidentes'}`
      : `${found} de ${all} ${all === 1 ? 'incidente' : 'incidentes'}`,
  narrow: (set) => ['Acotar la lista', set.join(' · ')].filter(Boolean).join(': '),
  clear: 'Mostrar todos los incidentes',
  any: 'Cualquiera',
  filters: {
    status: 'Abierto o cerrado',
    reports: 'Informes',
    outcome: 'Algún informe está',
    hurt: '¿Hay heridos?',
    craft: 'Embarcación',
    station: 'Estación',
    casualty: 'Tipo de suceso',
    from: 'Abierto desde',
    until: 'Abierto hasta',
    order: 'Orden',
  },
  statuses: { open: 'Abierto', closed: 'Cerrado' },
  standings: { open: 'Queda algo por resolver', overdue: 'Atrasado' },
  outcomes: {
    required: 'Obligatorio',
    undetermined: 'Aún no se puede decir',
    'not-required': 'No obligatorio',
  },
  harms: {
    yes: 'Alguien sí',
    no: 'Nadie, y se sabe de todos',
    unknown: 'Aún no se sabe',
  },
  orders: {
    latest: 'Primero los últimos',
    oldest: 'Primero los más antiguos',
    due: 'Primero el plazo más próximo',
  },
  columns: {
    reference: 'Referencia',
    what: 'Qué',
    where: 'Dónde',
    when: 'Cuándo',
    clock: 'Primer plazo',
    duty: 'Informes',
    tasks: 'Tareas',
    status: 'Estado',
  },
  kinds: values.callKind,
  fates: values.outcome,
  casualties: vocabulary,
  nothingSaid: 'Aún no se sabe nada',
  whereUnknown: 'Lugar aún desconocido',
  opened: (when) => `abierto ${when}`,
  noClock: 'No corre ningún plazo',
  duty: {
    none: 'Aún sin determinar',
    filed: 'Presentado',
    decided: 'Decidido: sin informe',
    supplement: 'Completar lo presentado',
    overdue: 'atrasado',
    open: (count) => `${count} por resolver`,
  },
  tasks: (open, overdue) => (overdue > 0 ? `${open} abiertas, ${overdue} atrasadas` : `${open} abiertas`),
  empty: {
    none: 'Todavía no hay ningún incidente. Uno empieza con una petición de ayuda.',
    call: 'Pedir ayuda',
    counsel: 'No se le ha asignado ningún incidente.',
    filtered: 'Ningún incidente coincide. Quite algo de la búsqueda o muestre todos los incidentes.',
  },
  offlineSearch:
    'Para buscar hace falta señal. Sin ella, este aparato muestra la primera página como se vio por última vez.',
  first: 'Primera página',
  previous: 'Página anterior',
  next: 'Página siguiente',
  views: {
    title: 'Vistas guardadas',
    about: 'Guardadas en este aparato, selladas, solo para usted.',
    name: 'Nombre de esta vista',
    save: 'Guardar lo que se muestra como vista',
    nameMissing: 'Póngale primero un nombre.',
    none: 'En este aparato no hay vistas guardadas. Acote la lista y guárdela con un nombre.',
    take: 'Quitar',
    remove: (name) => `Quitar la vista ${name}`,
    removed: (name) => `Se quitó la vista ${name}.`,
    saved: (name) => `Guardada como ${name}.`,
    notKept:
      'Este navegador no guarda nada, así que no se puede guardar una vista. La dirección de la página lleva la búsqueda: guarde esa.',
  },
  files: {
    title: 'Como archivo',
    about:
      'Todo lo que encuentra la búsqueda, en todas sus páginas. El archivo nombra lesiones: cuídelo como el registro.',
    workbook: 'Hacer un libro (.xlsx)',
    table: 'Hacer una tabla (.csv)',
    of: 'Tabla de',
    subjects: { incidents: 'Incidentes', duties: 'Informes', tasks: 'Tareas', filings: 'Presentaciones' },
    progress: (done, total) => `${done} de ${total} leídos`,
    writing: 'Se está escribiendo el archivo',
    ready: 'Listo: guárdelo antes de una hora.',
    save: 'Guardar el archivo',
    another: 'Hacer otro',
  },
  map: {
    show: 'Mostrar el mapa',
    hide: 'Ocultar el mapa',
    title: 'Mapa de estos incidentes',
    without: (count) =>
      count === 1
        ? '1 incidente de esta página no tiene posición.'
        : `${count} incidentes de esta página no tienen posición.`,
    nowhere: 'Ningún incidente de esta página tiene posición.',
    find: (reference) => `Mostrar ${reference} en el mapa`,
    pin: (number, reference) => `${number}: ${reference}`,
    picked: 'En el mapa',
  },
};
