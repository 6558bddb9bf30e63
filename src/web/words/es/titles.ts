import type { Titles } from '../en/titles.js';

export const titles: Titles = {
  call: 'Pedir ayuda',
  register: 'Registro de incidentes',
  tryLaw: 'Probar la ley',
  password: 'Contraseña',
  enrol: 'Inscribir este aparato',
};
