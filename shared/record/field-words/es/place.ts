import type {
  account as accountEn,
  conditions as conditionsEn,
  timeAndPlace as placeEn,
} from '../en/place.js';

export const timeAndPlace: typeof placeEn = {
  title: 'Hora y lugar',
  lead: 'Cuándo y dónde ocurrió.',
  fields: {
    '/occurred': 'Cuándo ocurrió',
    '/timeZone': 'Zona horaria del lugar',
    '/position': 'Posición',
    '/states': 'Estado',
    '/waterBody': 'Nombre de las aguas',
    '/nearestTown': 'Ciudad o pueblo más cercano',
    '/county': 'Condado',
    '/description': 'El lugar, en palabras',
    '/namedPlace': 'Lugar con nombre nuestro',
    '/federalWaters': '¿Aguas de los Estados Unidos?',
  },
  help: {
    '/position': 'Grados, norte y este positivos (WGS 84). Debajo, como se dijo.',
    '/states': 'Dos letras, como TX. Varios mientras no esté claro de qué lado de la línea fue.',
    '/description': 'Señas que otra persona encontraría: el tercer muelle, a un tiro de piedra de la punta.',
    '/federalWaters': 'Aguas sujetas a la jurisdicción de los Estados Unidos (33 CFR 173.51).',
  },
};

export const account: typeof accountEn = {
  title: 'Qué pasó',
  lead: 'Lo que se vio y se dijo, primero lo primero. Aquí no se pregunta por culpas.',
  fields: {
    '/casualtyTypes': 'Clase de suceso, primero lo primero',
    '/involvesVesselOrEquipment': '¿Intervino una embarcación o su equipo?',
    '/oilSheen': '¿Aceite o combustible en el agua?',
    '/bridgeStruck': '¿Se golpeó un puente?',
    '/propulsionOrSteeringLost': '¿Se perdió la propulsión o el timón?',
    '/seaworthinessImpaired': '¿Quedó una embarcación insegura para salir?',
    '/whatHappened': 'Qué pasó, en orden',
    '/equipmentFailures': 'Equipo que falló',
    '/contributingFactors': 'Qué contribuyó',
  },
  help: {
    '/whatHappened': 'Lo que se vio, se oyó y se hizo, y quién.',
    '/equipmentFailures': 'Qué dejó de funcionar y cuándo se lo vio funcionar por última vez.',
    '/contributingFactors': 'Hechos, no culpas: viento, una ola de otra lancha, una pieza rota.',
  },
};

export const conditions: typeof conditionsEn = {
  title: 'Tiempo y agua',
  lead: 'Como estaba allí y entonces; quién lo vio o qué se leyó.',
  fields: {
    '/observedAt': 'Cuándo estaba así',
    '/weather': 'Tiempo',
    '/water': 'Agua',
    '/waves': 'Altura de las olas',
    '/wind': 'Viento',
    '/gusts': 'Ráfagas',
    '/windFrom': 'Viento de',
    '/visibility': 'Visibilidad',
    '/visibilityDistance': 'Hasta dónde se veía',
    '/light': 'Luz',
    '/airTemperature': 'Temperatura del aire',
    '/waterTemperature': 'Temperatura del agua',
    '/waterDepth': 'Profundidad del agua',
    '/waterLevel': 'Nivel del lago o río',
    '/current': 'Corriente',
    '/currentSpeed': 'Velocidad de la corriente',
    '/traffic': 'Otro tráfico',
    '/hazards': 'Obstáculos',
    '/forecastAvailable': 'Qué pronóstico había',
    '/forecastUsed': 'Qué pronóstico se miró, y quién',
  },
  help: {
    '/water': 'Tranquila, picada, agitada, muy agitada.',
    '/waves': 'La medida misma: cada formulario traza sus franjas de otro modo.',
    '/windFrom': 'De dónde viene: sureste.',
    '/waterLevel': 'Como se anunció ese día, y si asoman tocones o bancos.',
    '/hazards': 'Tocones, bancos, boyas fuera de lugar, bañistas, cabos.',
  },
};
