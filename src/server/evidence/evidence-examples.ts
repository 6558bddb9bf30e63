export const INCIDENT_ID = '5f0c5d0e-3f38-4d6e-9a54-0d1b7a0f5c11';
export const FILE_ID = '7d1f8e52-7a4c-4f0b-8f6a-5f5a7c3b2e10';
export const ITEM_ID = '0b8f1c7a-64f2-4b8e-9d3e-2a9c5d7e6f01';
const HASH = 'b94d27b9934d3e08a52e52d7da7dabfac484efe37a5380ee9088f7ace2efcde9';

export const ABOUT = { caption: 'Bow of PWC 7 at the dock', takenBy: 'Ana Ruiz', people: [], craft: ['c1'] };

export const UPLOAD_SENT = {
  size: 2_481_007,
  name: 'IMG_2041.jpg',
  type: 'image/jpeg',
  sha256: HASH,
  about: ABOUT,
};

export const UPLOAD_SHOWN = {
  id: FILE_ID,
  version: 1,
  size: 2_481_007,
  offset: 1_048_576,
  longestPiece: 8_388_608,
  startedAt: '2026-06-13T20:15:00.000Z',
};

export const RECEIPT = {
  id: FILE_ID,
  version: 1,
  kind: 'photo',
  type: 'image/jpeg',
  size: 2_481_007,
  sha256: HASH,
  receivedAt: '2026-06-13T20:15:31.000Z',
};

export const FILE_SHOWN = {
  ...RECEIPT,
  declaredType: 'image/jpeg',
  name: 'IMG_2041.jpg',
  receivedFrom: 'Ana Ruiz, Dock phone 2',
  about: ABOUT,
  captured: { local: '2026-06-13T14:02:00', latitude: 33.83, longitude: -96.57 },
  isRestricted: false,
  questions: [
    {
      code: 'taken-before',
      text:
        'The file says that it was taken at 14:02, the record that it happened at 15:10: ' +
        'which clock is off, or was it taken before?',
    },
  ],
  previews: [1600, 320],
};

export const ITEM_SENT = {
  what: 'Lanyard of PWC 7, clip broken',
  foundWhere: 'On the swim platform',
  foundAt: '2026-06-13T15:40:00-05:00',
  foundBy: 'Ana Ruiz',
  keptWhere: 'Office safe',
  seal: '0417',
};

export const HAND_OVER_SENT = {
  from: 'Ana Ruiz',
  to: 'Game warden Pike',
  at: '2026-06-13T18:05:00-05:00',
  why: 'Taken for the accident report',
  seal: '0417',
};

export const ITEM_SHOWN = {
  id: ITEM_ID,
  version: 2,
  ...ITEM_SENT,
  handOvers: [{ id: FILE_ID, ...HAND_OVER_SENT }],
  gaps: ['There is no photograph of it as it was found.'],
};

export const OUTSIDE_SENT = {
  kind: 'dock-camera',
  state: 'not-asked',
  what: 'Camera over the fuel dock, 15:00 to 15:30',
  holder: 'The marina next door',
  overwrittenAt: '2026-06-20T00:00:00-05:00',
};

export const OUTSIDE_SHOWN = {
  id: ITEM_ID,
  version: 1,
  ...OUTSIDE_SENT,
  gaps: ['Nobody has asked for it yet.'],
};
