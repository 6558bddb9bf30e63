import type { Titles } from '../en/titles.js';

export const titles: Titles = {
  tryLaw: 'Probar la ley',
  password: 'Contraseña',
  enrol: 'Inscribir este aparato',
};
