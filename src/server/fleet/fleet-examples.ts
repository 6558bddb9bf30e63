/** What people send and get, for the API's document. The numbers are the examples of the rules that explain them. */

export const CRAFT_ID = '2b7f0c6e-58a1-4c7c-9d55-6b1f0f4f9f01';
export const STATION_ID = '8c1d3a52-0f7e-4a9b-8f8e-0c5b7f2d6e02';
export const INCIDENT_ID = 'd4e8b7a0-3c62-4f1d-a6a7-1b2c3d4e5f03';
export const OTHER_ID = '5a9e2c84-7d31-4e0a-b0c5-9f8e7d6c5b04';

export const BY = {
  person: 'Ana Ruiz',
  accountId: OTHER_ID,
  role: 'manager',
  device: 'Dock phone 2',
  deviceId: OTHER_ID,
  recordedAt: '2026-06-13T16:24:10.000Z',
};

export const CRAFT_SENT = {
  unitName: 'PWC 7',
  type: 'personal-watercraft',
  colours: ['red', 'white'],
  hullNumber: 'ABC12345D404',
  registrationNumber: 'TX 1234 AB',
  hullMaterial: 'fiberglass',
  propulsion: 'water-jet',
  engineDrive: 'inboard',
  fuel: 'gas',
  modelYear: 2004,
  lengthFt: 10.5,
  horsepower: 130,
  capacityPeople: 3,
  stationId: STATION_ID,
};

export const CRAFT_SHOWN = {
  id: CRAFT_ID,
  version: 1,
  ...CRAFT_SENT,
  hullNumberReading: {
    explanation: [
      'ABC is the code of the manufacturer or importer.',
      '12345 is the serial number.',
      'D4 is the month of certification or manufacture: April 2004.',
      '04 is the model year: 2004.',
      'The format is the current one (33 CFR 181.25).',
    ],
    remarks: [],
  },
  registrationNumberReading: {
    explanation: [
      'TX is the prefix of Texas (33 CFR part 173, appendix A).',
      "1234 AB is the vessel's number there.",
    ],
    remarks: [],
  },
};

export const STATION_SENT = {
  name: 'North dock',
  timeZone: 'America/Chicago',
  state: 'TX',
  address: 'End of the marina road',
  position: '33 49.08 N 96 34.26 W',
  numbers: [
    { id: 'n1', of: 'dispatch', name: 'County dispatch', phone: '911' },
    { id: 'n2', of: 'tow', name: 'Lake tow', phone: '580-555-0123', channel: 'VHF 16' },
  ],
};

const POSITION_SHOWN = {
  latitude: 33.818,
  longitude: -96.571,
  positionReading: { notation: 'degrees-minutes', precisionM: 18.52, remarks: [] },
};

export const STATION_SHOWN = { id: STATION_ID, version: 1, ...STATION_SENT, ...POSITION_SHOWN };

export const PLACE_SENT = {
  name: 'The cut',
  alsoCalled: ['The narrows'],
  position: '33 49.08 N 96 34.26 W',
  waterBody: 'Lake Texoma',
  state: 'TX',
};

export const PLACE_SHOWN = { id: OTHER_ID, version: 1, ...PLACE_SENT, ...POSITION_SHOWN };

export const POLICY_SENT = {
  number: 'W-20114',
  insurer: 'Harbor Mutual',
  covers: 'Hull and liability',
  firstDay: '2026-04-01',
  lastDay: '2027-03-31',
  scheduledCraft: [CRAFT_ID],
  noticePhone: '580-555-0188',
  noticeTerms: 'As soon as possible; inspection before repair.',
  deductibleCents: 250_000,
};

export const POLICY_SHOWN = { id: OTHER_ID, version: 1, ...POLICY_SENT };

export const STEPS_SENT = [
  { kind: 'do-not-start', reason: 'Water in the engine.' },
  { kind: 'photographed', incident: INCIDENT_ID, photographs: ['bow.jpg', 'stern.jpg'] },
  {
    kind: 'held-by-agency',
    at: '2026-06-13T11:24:00-05:00',
    agency: 'State wardens',
    officer: 'L. Ortiz',
    badge: '114',
    receipt: 'R-2291',
    photographs: ['before-hand-over.jpg'],
    hourMeter: 212.4,
    keptWhere: 'Wardens’ yard',
  },
  {
    kind: 'cleared',
    incident: INCIDENT_ID,
    by: 'insurer',
    person: 'R. Vale',
    how: 'By mail of 3 July',
    reference: 'HM-77',
  },
  { kind: 'released', incident: INCIDENT_ID, photographs: ['as-it-goes-out.jpg'] },
];

export const NOTE_SENT = {
  about: 'prior-trip',
  text: 'Came back pulling to the left.',
  day: '2026-06-12',
  hourMeter: 211,
};
