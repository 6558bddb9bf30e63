const INCIDENT_ID = 'd4e8b7a0-3c62-4f1d-a6a7-1b2c3d4e5f03';

/** Samples for the API's document; everybody in them is invented. */
export const DRAFT = {
  kind: 'preservation-letter',
  from: 'N. Amparo',
  organization: 'Amparo and Vell, attorneys',
  onBehalfOf: 'the rider of the other craft',
  receivedAt: '2026-06-22T10:15:00-05:00',
  way: 'certified-mail',
  receivedBy: 'Ruth Castellanos',
  asked: 'That every record of 13 June be kept, the dock camera among it.',
  due: 'unknown',
  craft: ['PWC 7'],
  periodFrom: '2026-06-13',
  periodThrough: '2026-06-13',
  incidents: [{ id: INCIDENT_ID, hold: true }],
};

const { incidents, ...details } = DRAFT;
void incidents;

export const CORRECTION = {
  ...details,
  due: 'day',
  dueDay: '2026-07-10',
  dueBasis: 'agreed',
  reason: 'They named a day on the telephone.',
};

export const INCIDENT = { id: INCIDENT_ID, hold: true };

export const STATUS = { status: 'answered', reason: 'Counsel wrote that everything is kept.' };

export const OBJECTION = {
  at: '2026-07-01T16:00:00-05:00',
  to: 'N. Amparo',
  way: 'certified mail, by counsel',
  what: 'Counsel objected to the request for other days than 13 June.',
};

export const PRODUCTION = {
  at: '2026-07-08T09:30:00-05:00',
  to: 'N. Amparo',
  way: 'on a stick, by courier',
  what: 'The packet for another party, and the original of the dock camera.',
  incident: INCIDENT_ID,
};

export const SERVED = {
  from: 'A process server, who gave no name',
  receivedAt: '2026-06-22T10:15:00-05:00',
  way: 'served-in-person',
  note: 'The envelope lies in the safe.',
};

export const TAKEN = {
  id: '4f0d6a1e-7b92-4c35-8e1f-2d3c4b5a6978',
  version: 1,
  number: 'R-2026-0004',
  receivedAt: '2026-06-22T10:15:00-05:00',
};
