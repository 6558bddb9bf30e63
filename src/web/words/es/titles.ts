import type { Titles } from '../en/titles.js';

export const titles: Titles = {
  call: 'Pedir ayuda',
  tryLaw: 'Probar la ley',
  password: 'Contraseña',
  enrol: 'Inscribir este aparato',
};
