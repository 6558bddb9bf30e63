/** What people send and get, for the API's document. */

const ID = '5a9e2c84-7d31-4e0a-b0c5-9f8e7d6c5b04';
const OTHER_ID = '8c1d3a52-0f7e-4a9b-8f8e-0c5b7f2d6e02';
const REPORT = { duty: 'us-tx/accident-report', vessel: 'PWC 7' };
const FEDERAL = { duty: 'us/accident-report', vessel: 'PWC 7' };
const BY = { account: OTHER_ID, person: 'Ana Ruiz', role: 'manager' };
const RECORDED_AT = '2026-06-14T16:24:10.000Z';

export const SIGNINGS_SENT = [
  { kind: 'report', determination: 3, ...REPORT },
  {
    kind: 'wait',
    determination: 3,
    ...REPORT,
    until: '2026-06-14T11:20:00-05:00',
    questions: ['What care did the rider need?'],
  },
  {
    kind: 'no-report',
    determination: 3,
    ...REPORT,
    reason: 'The damage was there at check-out.',
    counsel: 'J. Vance',
  },
];

export const DECISION_SHOWN = {
  id: ID,
  version: 1,
  ...REPORT,
  kind: 'report',
  determination: 3,
  signedAt: RECORDED_AT,
  by: BY,
};

export const FILING_SENT = {
  form: 'report',
  at: '2026-06-14T11:20:00-05:00',
  way: 'online',
  to: 'Parks and Wildlife Department, boating accident desk',
  jurisdiction: 'us-tx',
  filedBy: 'owner',
  filer: 'Ana Ruiz',
  confirmation: 'B-20991',
  satisfies: [FEDERAL, REPORT],
};

export const FILING_SHOWN = { ...FILING_SENT, id: ID, version: 1, by: BY, recordedAt: RECORDED_AT };

export const OPERATOR_NOTICE_SENT = {
  vessel: 'PWC 7',
  at: '2026-06-13T12:10:00-05:00',
  told: 'yes',
  toldBy: 'Ana Ruiz',
  way: 'in person',
  saysFiled: 'unknown',
};

export const OPERATOR_NOTICE_SHOWN = {
  ...OPERATOR_NOTICE_SENT,
  id: ID,
  version: 1,
  by: BY,
  recordedAt: RECORDED_AT,
};

export const LEGAL_CALL_SENT = {
  at: '2026-06-13T15:00:00-05:00',
  with: 'agency',
  who: 'L. Ortiz, boating law office',
  said: 'Nothing is due where nobody needed care and the damage is below the amount.',
  duties: [REPORT.duty],
};

export const LEGAL_CALL_SHOWN = { ...LEGAL_CALL_SENT, id: ID, version: 1, by: BY, recordedAt: RECORDED_AT };

export const REOPENING_SHOWN = {
  id: OTHER_ID,
  at: RECORDED_AT,
  determination: 4,
  ...REPORT,
  decision: ID,
  changes: [{ what: 'outcome', text: 'It was “Not required” and is now “Required”.' }],
};

export const DUTY_SHOWN = {
  ...REPORT,
  jurisdiction: 'us-tx',
  kind: 'accident-report',
  form: 'report',
  outcome: 'required',
  immediate: false,
  dueAt: '2026-06-15T11:20:00-05:00',
  dueAtIfRequired: null,
  dueBasis: '48 hours from the occurrence',
  authority: 'A game warden of the Parks and Wildlife Department',
  reporter: { who: 'operator', text: 'The operator.' },
  questions: [],
  state: 'open',
  decision: null,
  reopenings: [REOPENING_SHOWN],
  filings: [],
  proposal: {
    code: 'LEAD_TIME',
    kind: 'report',
    text: 'It is due by Mon 15 June 11:20: report now, on what is known, and supplement it later.',
    until: '2026-06-15T11:20:00-05:00',
  },
  operator: {
    code: 'OWNER_REPORTS',
    text: 'The operator has not said that it was filed. File the owner’s own report, on what is known (33 CFR 173.55(c)).',
  },
  callFirst: null,
  changedAt: RECORDED_AT,
};
