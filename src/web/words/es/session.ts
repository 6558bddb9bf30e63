import type { SessionWords } from '../en/session.js';

export const session: SessionWords = {
  signIn: {
    title: 'Iniciar sesión',
    lead: 'Para pedir ayuda en un teléfono inscrito no hace falta iniciar sesión.',
    name: 'Nombre de usuario',
    password: 'Contraseña',
    button: 'Iniciar sesión',
    again: 'Su sesión terminó',
    againLead: (name) => `No se perdió nada de lo escrito. Inicie sesión de nuevo, ${name}, y continúa.`,
    leave: 'Ahora no: la página queda como está',
    already: (name, role) => `Su sesión está abierta: ${name}, ${role}.`,
  },
  password: {
    title: 'Elija una contraseña',
    due: 'Un administrador le dio su contraseña. Antes de todo, elija una propia.',
    current: 'Contraseña actual',
    next: 'Contraseña nueva',
    nextHint: (shortest) => `Al menos ${shortest} caracteres. Tres o cuatro palabras se recuerdan bien.`,
    button: 'Guardar esta contraseña',
    done: 'Su contraseña nueva está guardada. Sus otras sesiones terminaron.',
  },
  notice: {
    title: 'Dónde se le avisa',
    lead: 'De tareas que vencen y de paquetes recogidos. El correo no lleva nombres ni nada de un registro.',
    mail: 'Correo electrónico',
    phone: 'Teléfono',
    button: 'Guardar',
    kept: 'Guardado. Lo que se deja vacío se quita.',
  },
  enrol: {
    title: 'Inscribir este aparato',
    lead: 'Un teléfono inscrito puede pedir ayuda y añadir al expediente sin sesión. No muestra expedientes.',
    code: 'Código',
    codeHint: 'Un administrador lo obtiene en Personas y aparatos. Sirve una vez, durante 15 minutos.',
    button: 'Inscribir este aparato',
    enrolled: (name) => `Este aparato está inscrito como ${name}.`,
    toCall: 'Ir a la página de ayuda',
  },
};
