import type { Titles } from '../en/titles.js';

export const titles: Titles = {
  today: 'Hoy',
  call: 'Pedir ayuda',
  outAndBack: 'Salidas y regresos',
  register: 'Registro de incidentes',
  fleet: 'Flota',
  places: 'Lugares',
  people: 'Personas',
  mail: 'Correo',
  pin: 'Su PIN',
  shiftHandOver: 'Relevo de turno',
  followUp: 'Seguimiento',
  requests: 'Solicitudes',
  servedPaper: 'Entregaron un papel',
  law: 'Leyes',
  tryLaw: 'Probar la ley',
  password: 'Contraseña',
  enrol: 'Inscribir este aparato',
};
