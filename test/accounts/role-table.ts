import type { Who } from '../../src/server/platform/http/may-use.js';

const STAFF: Who[] = ['staff', 'manager', 'administrator'];
const MANAGERS: Who[] = ['manager', 'administrator'];
const ADMINISTRATORS: Who[] = ['administrator'];
/** Whoever is signed in, about themselves. */
const PEOPLE: Who[] = ['staff', 'manager', 'administrator', 'counsel'];
const DEVICE: Who[] = ['device'];
/** Those who add to the record. */
const WRITERS: Who[] = [...STAFF, 'device'];
/** Those who read it; counsel only what it was assigned. */
const READERS: Who[] = [...STAFF, 'counsel'];
/** These hold no records: law is public, and of a determination nothing is kept. */
const ANYONE: Who[] = ['anyone'];

/**
 * Who may use which route of the API, written out by hand: a route that is added or opened to somebody stands here
 * too, or the test fails.
 */
export const ROLE_TABLE: Record<string, Who[]> = {
  'GET /api/health': ANYONE,
  'GET /api/law': ANYONE,
  'GET /api/law/packs': ANYONE,
  'GET /api/law/:code': ANYONE,
  'GET /api/schemas/:name': ANYONE,
  'POST /api/determinations': ANYONE,

  'POST /api/session': ANYONE,
  'GET /api/session': PEOPLE,
  'DELETE /api/session': PEOPLE,
  'PUT /api/session/password': PEOPLE,
  'PUT /api/session/pin': PEOPLE,

  'GET /api/accounts': MANAGERS,
  'GET /api/accounts/:id': MANAGERS,
  'POST /api/accounts': ADMINISTRATORS,
  'PATCH /api/accounts/:id': ADMINISTRATORS,
  'POST /api/accounts/:id/password-reset': ADMINISTRATORS,

  'GET /api/devices': ADMINISTRATORS,
  'POST /api/devices': ADMINISTRATORS,
  'DELETE /api/devices/:id': ADMINISTRATORS,

  'POST /api/device': ANYONE,
  'GET /api/device': DEVICE,
  'GET /api/device/people': DEVICE,
  'GET /api/device/fleet': DEVICE,
  'POST /api/device/confirmations': DEVICE,

  'GET /api/roster': STAFF,
  'POST /api/roster': MANAGERS,
  'PATCH /api/roster/:id': MANAGERS,
  'DELETE /api/roster/:id': MANAGERS,

  'GET /api/certificates': STAFF,
  'POST /api/certificates': MANAGERS,
  'PATCH /api/certificates/:id': MANAGERS,
  'DELETE /api/certificates/:id': MANAGERS,

  'GET /api/calendar-feeds': STAFF,
  'POST /api/calendar-feeds': STAFF,
  'DELETE /api/calendar-feeds/:id': STAFF,

  'GET /api/mail': ADMINISTRATORS,
  'POST /api/mail/:id/resend': ADMINISTRATORS,
  'POST /api/mail/:id/delivered': ADMINISTRATORS,

  'GET /api/craft': STAFF,
  'GET /api/craft/matches': STAFF,
  'GET /api/craft/:id': STAFF,
  'GET /api/craft/:id/versions': STAFF,
  'POST /api/craft': MANAGERS,
  'PUT /api/craft/:id': MANAGERS,
  'GET /api/craft/:id/service': STAFF,
  'GET /api/craft/:id/service-steps': STAFF,
  'POST /api/craft/:id/service-steps': [...STAFF, 'device'],
  'GET /api/craft/:id/notes': STAFF,
  'POST /api/craft/:id/notes': [...STAFF, 'device'],

  'GET /api/stations': STAFF,
  'GET /api/stations/:id': STAFF,
  'GET /api/stations/:id/versions': STAFF,
  'POST /api/stations': MANAGERS,
  'PUT /api/stations/:id': MANAGERS,

  'GET /api/places': STAFF,
  'GET /api/places/:id': STAFF,
  'GET /api/places/:id/versions': STAFF,
  'POST /api/places': MANAGERS,
  'PUT /api/places/:id': MANAGERS,

  'GET /api/policies': MANAGERS,
  'GET /api/policies/:id': MANAGERS,
  'GET /api/policies/:id/versions': MANAGERS,
  'POST /api/policies': MANAGERS,
  'PUT /api/policies/:id': MANAGERS,

  'GET /api/release-amounts': STAFF,
  'POST /api/release-amounts': ADMINISTRATORS,

  'POST /api/incidents': WRITERS,
  'GET /api/incidents': READERS,
  'GET /api/incidents/:id': READERS,
  'PUT /api/incidents/:id/status': MANAGERS,
  'POST /api/incidents/:id/same-event': STAFF,
  'GET /api/incidents/:id/record': READERS,
  'GET /api/incidents/:id/amendments': READERS,
  'GET /api/incidents/:id/sections/:section': READERS,
  'GET /api/incidents/:id/sections/:section/schema': ANYONE,
  'PUT /api/incidents/:id/sections/:section': WRITERS,
  'POST /api/incidents/:id/sections/:section/additions': WRITERS,
  'POST /api/incidents/:id/sections/:section/withdrawals': MANAGERS,
  'GET /api/incidents/:id/drafts': STAFF,
  'PUT /api/incidents/:id/drafts/:section': WRITERS,
  'DELETE /api/incidents/:id/drafts/:section': WRITERS,
  'POST /api/incidents/:id/amendments/:sequence/withdrawals': MANAGERS,
  'GET /api/incidents/:id/holds': READERS,
  'POST /api/incidents/:id/holds': MANAGERS,
  'POST /api/incidents/:id/holds/:hold/custodians': MANAGERS,
  'POST /api/incidents/:id/holds/:hold/acknowledgements': STAFF,
  'POST /api/incidents/:id/holds/:hold/release': MANAGERS,
  'GET /api/incidents/:id/counsel': [...MANAGERS, 'counsel'],
  'POST /api/incidents/:id/counsel': MANAGERS,
  'DELETE /api/incidents/:id/counsel/:account': MANAGERS,
  'POST /api/incidents/:id/counsel-requests': MANAGERS,
  'GET /api/incidents/:id/counsel-requests': [...MANAGERS, 'counsel'],
  'POST /api/incidents/:id/counsel-requests/:request/entries': MANAGERS,
  'GET /api/incidents/:id/privileged': ['counsel'],

  'GET /api/incidents/:id/evidence': READERS,
  'GET /api/incidents/:id/evidence/:file': READERS,
  'PATCH /api/incidents/:id/evidence/:file': STAFF,
  'GET /api/incidents/:id/evidence/:file/original': READERS,
  'GET /api/incidents/:id/evidence/:file/previews/:edge': READERS,
  'POST /api/incidents/:id/evidence/:file/withdrawal': MANAGERS,
  'POST /api/incidents/:id/evidence/uploads': WRITERS,
  'GET /api/incidents/:id/evidence/uploads/:upload': READERS,
  'PATCH /api/incidents/:id/evidence/uploads/:upload': WRITERS,
  'POST /api/incidents/:id/evidence/uploads/:upload/finish': WRITERS,
  'DELETE /api/incidents/:id/evidence/uploads/:upload': STAFF,
  'GET /api/incidents/:id/custody': READERS,
  'POST /api/incidents/:id/custody': STAFF,
  'POST /api/incidents/:id/custody/:item/hand-overs': STAFF,
  'GET /api/incidents/:id/outside-evidence': READERS,
  'POST /api/incidents/:id/outside-evidence': STAFF,
  'PUT /api/incidents/:id/outside-evidence/:item': STAFF,

  'GET /api/incidents/:id/tasks': READERS,
  'POST /api/incidents/:id/tasks': STAFF,
  'GET /api/incidents/:id/tasks/:task': READERS,
  'POST /api/incidents/:id/tasks/:task/completion': STAFF,
  'POST /api/incidents/:id/tasks/:task/undoing': STAFF,
  'PUT /api/incidents/:id/tasks/:task/assignee': STAFF,
  'POST /api/incidents/:id/tasks/:task/acknowledgement': STAFF,
  'POST /api/incidents/:id/tasks/:task/reached': STAFF,
  'GET /api/incidents/:id/call-list': READERS,
  'GET /api/incidents/:id/claims-clocks': READERS,
  'GET /api/incidents/:id/closing': READERS,
  'GET /api/incidents/:id/who-may-be-written-to': READERS,
  'GET /api/incidents/:id/house-rule-observations': MANAGERS,
  'GET /api/tasks': STAFF,
  'GET /api/escalations': STAFF,
  'GET /api/shift-hand-overs': STAFF,
  'POST /api/shift-hand-overs': STAFF,
  'GET /api/shift-hand-overs/:id': STAFF,
  'POST /api/shift-hand-overs/:id/signatures': STAFF,
  'GET /api/house-rules': STAFF,
  'POST /api/house-rules': ADMINISTRATORS,
  'GET /api/notice-address': PEOPLE,
  'PUT /api/notice-address': PEOPLE,

  'GET /api/incidents/:id/determination': READERS,
  'GET /api/incidents/:id/determinations': READERS,
  'GET /api/incidents/:id/determinations/:sequence': READERS,

  'GET /api/incidents/:id/duties': READERS,
  'GET /api/incidents/:id/decisions': READERS,
  'POST /api/incidents/:id/decisions': MANAGERS,
  'GET /api/incidents/:id/filings': READERS,
  'POST /api/incidents/:id/filings': MANAGERS,
  'GET /api/incidents/:id/operator-notices': READERS,
  'POST /api/incidents/:id/operator-notices': STAFF,
  'GET /api/incidents/:id/legal-calls': READERS,
  'POST /api/incidents/:id/legal-calls': MANAGERS,

  'GET /api/backups': MANAGERS,

  'GET /api/incidents/:id/reports': READERS,
  'GET /api/incidents/:id/report-lacks': READERS,
  'GET /api/incidents/:id/reports/:report': [...MANAGERS, 'counsel'],
  'GET /api/incidents/:id/reports/:report/worksheet': [...MANAGERS, 'counsel'],
  'GET /api/incidents/:id/reports/:report/notes': [...MANAGERS, 'counsel'],
  'PUT /api/incidents/:id/reports/:report/notes': MANAGERS,

  'GET /api/register': STAFF,
  'POST /api/register-exports': MANAGERS,
  'GET /api/register-exports/:id': MANAGERS,
  'GET /api/register-exports/:id/file': MANAGERS,
};
