import type { WhatToSay } from '../en/what-to-say.js';

export const whatToSay: WhatToSay = {
  title: 'Qué decir',
  lead: 'A cualquiera que pregunte después de un accidente. Cuidado: sí. Culpas, promesas y copias: no.',
  first: 'Primero las personas. Nadie espera una respuesta mientras alguien necesita ayuda.',
  yes: {
    title: 'Diga esto',
    parts: [
      {
        title: 'Cuidado',
        lines: [
          '«¿Está bien? ¿Le duele algo?»',
          '«La ayuda viene en camino. Me quedo con usted.»',
          '«Siento que le haya pasado esto.»',
          '«Aquí hay agua, sombra y un teléfono. ¿A quién llamamos?»',
        ],
      },
      {
        title: 'La verdad, y solo lo que usted vio',
        lines: [
          '«Esto es lo que yo vi.»',
          '«No lo sé.» Es una buena respuesta. No adivine ni complete lo que falta.',
        ],
      },
    ],
  },
  no: {
    title: 'No diga esto',
    parts: [
      {
        title: 'Culpas',
        lines: [
          '«Fue culpa nuestra», «fue culpa suya», «fue culpa de ellos».',
          '«Esa ya dio problemas», «iban demasiado rápido»: nada sobre el porqué.',
        ],
      },
      {
        title: 'Promesas',
        lines: [
          '«Nosotros pagamos», «el seguro paga», «le devolvemos el dinero».',
          '«Nos debe eso», «perdió el depósito».',
          '«No necesita un médico», «nadie tiene que informar de esto».',
        ],
      },
      {
        title: 'Copias',
        lines: [
          'De su mano no salen fotos, papeles, declaraciones ni grabaciones, salvo las hojas que se nombran abajo.',
          'Nada se publica, nada se manda a un amigo. Cómo está alguien se dice solo a quienes lo atienden.',
        ],
      },
    ],
  },
  asked: {
    title: 'Si alguien pregunta',
    who: 'Quién pregunta',
    answer: 'Qué contesta usted',
    rows: [
      {
        who: 'Un oficial',
        answer:
          'Diga la verdad sobre lo que vio. Entregue la hoja para el oficial, que está en el incidente. Para otros papeles, llame enseguida al gerente. No toque ni esconda nada.',
      },
      {
        who: 'El otro navegante, alguien herido, el dueño de lo dañado',
        answer:
          'Nombre, dirección y los números de la embarcación: la hoja para el otro operador (46 U.S.C. 2303(a)(2)). Nada más.',
      },
      {
        who: '«¿De quién fue la culpa?»',
        answer: '«No lo sé, y no adivino. Estamos anotando lo que pasó.»',
      },
      {
        who: '«¿Ustedes pagan?»',
        answer: '«No puedo decirlo. El gerente habla con usted: este es el número.»',
      },
      {
        who: '«¿Tengo que informarlo?»',
        answer:
          '«Puede que el operador de una embarcación deba hacerlo, por ley (33 CFR 173.55). Pregunte al gerente; yo no puedo decírselo.»',
      },
      {
        who: '«¿Me da una copia?»',
        answer: '«Yo no. Anoto que la pidió, y el gerente le contesta.»',
      },
      {
        who: 'La familia',
        answer:
          '«Alguien habla con usted enseguida.» Traiga al gerente. Que alguien murió lo dice la autoridad, nunca nosotros primero.',
      },
      { who: 'La prensa, gente que pasa', answer: '«El gerente habla por nosotros.»' },
    ],
  },
  write: {
    title: 'Después anótelo',
    lines: [
      'Quién preguntó, qué contestó usted y cuándo: en el incidente, el mismo día, con las palabras que se usaron.',
      'Lo que alguien le cuente, con sus palabras, sin su opinión.',
    ],
  },
  manager: 'El número del gerente:',
  not: 'Esta tarjeta no es asesoría legal. Lo que digan el abogado o el gerente va antes.',
};
