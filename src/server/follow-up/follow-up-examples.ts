/** What people send and get, for the API's document. */

export const INCIDENT_ID = 'd4e8b7a0-3c62-4f1d-a6a7-1b2c3d4e5f03';
export const TASK_ID = '1f0c5b7e-2a49-4d5e-9c11-7d3e8a6b4c05';
export const ACCOUNT_ID = '5a9e2c84-7d31-4e0a-b0c5-9f8e7d6c5b04';
const AT = '2026-06-13T16:52:00.000Z';

export const OWN_TASK = {
  title: 'Ask the marina for the camera at the fuel dock',
  why: 'It overwrites itself after three days.',
  dueAt: '2026-06-14T12:00:00-05:00',
  owner: 'shift-lead',
};

export const COMPLETION = {
  evidence: 'Told Harbor Mutual at 15:10, R. Vale, their HM-2291.',
  evidenceIds: [],
};
export const UNDOING = { why: 'That was the insurer of the other boat.' };
export const ASSIGNEE = { accountId: ACCOUNT_ID };
export const REACHED = { whom: 'County dispatch, L. Ortiz', on: '580-555-0123', theirReference: '26-1181' };

export const TASK = {
  id: TASK_ID,
  incident: INCIDENT_ID,
  key: 'insurer-told',
  round: 1,
  template: 'insurer-told',
  title: 'Tell the insurer the same day, on one page',
  why: 'Policies ask for notice as soon as possible; late notice can cost the cover.',
  source: 'Read your own policy',
  owner: 'manager',
  assignee: ACCOUNT_ID,
  state: 'open',
  dueAt: '2026-06-14T04:59:00.000Z',
  dueWhy: 'The day on which we learned of it.',
  overdue: false,
  evidenceAsked: 'Time, channel, person spoken to, their claim number, and when they will inspect.',
  escalates: false,
  restsOn: ['an injury beyond first aid'],
  duty: null,
  acknowledgedAt: null,
  acknowledgedBy: null,
  version: 2,
};

export const TASK_EVENT = {
  sequence: 2,
  kind: 'assigned',
  at: AT,
  words: null,
  evidenceIds: null,
  dueBefore: null,
  dueAfter: null,
  aboutAccountId: ACCOUNT_ID,
  person: 'Ana Ruiz',
  accountId: ACCOUNT_ID,
  device: null,
};

export const HAND_OVER_SENT = { remarks: 'Wind goes to the south at six.' };
export const SIGNATURE = { side: 'outgoing' };
export const HAND_OVER = {
  id: TASK_ID,
  version: 2,
  summary: {
    asOf: AT,
    openCalls: [{ incidentId: INCIDENT_ID, reference: '2026-0042', openedAt: AT }],
    craftHeld: [{ craftId: ACCOUNT_ID, name: 'PWC 7', station: 'North dock', why: ['Named in 2026-0042.'] }],
    notBack: [{ notBackId: TASK_ID, unit: 'Kayak 3', since: AT, ended: null }],
    callBacks: [],
    dueNext: [
      { taskId: TASK_ID, reference: '2026-0042', title: 'Call counsel', dueAt: AT, isPromise: false },
    ],
  },
  ...HAND_OVER_SENT,
  builtBy: 'Ana Ruiz',
  outgoingId: ACCOUNT_ID,
  outgoingName: 'Ana Ruiz',
  outgoingAt: AT,
  incomingId: null,
  incomingName: null,
  incomingAt: null,
  createdAt: AT,
  updatedAt: AT,
};

export const HOUSE_RULES_SENT = {
  adoptedOn: '2026-05-01',
  document: 'Dock rules, edition 3',
  rules: [{ id: 'distance-from-craft', value: 60 }, { id: 'life-jacket-always' }],
};

export const ADDRESS = { mail: 'ana@example.com', phone: '580-555-0123' };
