import { ROLES } from '../../../shared/kernel/role.js';
import { SHORTEST_PASSWORD } from '../../../shared/wire/accounts-secrets.js';
import { DUTIES } from '../../../shared/wire/accounts-roster.dto.js';
import { STANDINGS } from './certificate-standing.js';

type Schema = Record<string, unknown>;

const ID = '3f6c2f1e-5b1d-4c59-9d0e-2f4f6a1c7b10';
const OTHER_ID = '9a1b7c34-0f52-4d0a-8b3e-6c5d4e3f2a1b';

const id: Schema = { type: 'string', format: 'uuid' };
const line = (longest = 200): Schema => ({
  type: 'string',
  maxLength: longest,
  pattern: '^[^\\n\\r]*\\S[^\\n\\r]*$',
});
const lines = (longest: number): Schema => ({ type: 'string', maxLength: longest, pattern: '\\S' });
const secret: Schema = { type: 'string', minLength: 1, maxLength: 256 };
const pin: Schema = {
  type: 'string',
  pattern: '^[0-9]{4,8}$',
  description: 'No run, and not one digit alone.',
};
const instant: Schema = { type: 'string', format: 'date-time' };
const day: Schema = { type: 'string', format: 'date' };
const flag: Schema = { type: 'boolean' };
const version: Schema = { type: 'integer', minimum: 1, description: 'Also sent as ETag.' };
const cursor: Schema = { type: ['string', 'null'], description: 'The `after` of the next page.' };
const oneOf = (words: readonly string[]): Schema => ({ type: 'string', enum: words });
const maybe = (schema: Schema): Schema => ({ ...schema, type: [schema['type'], 'null'] });
const listOf = (items: Schema): Schema => ({ type: 'array', items });
const ref = (name: string): Schema => ({ $ref: `#/components/schemas/${name}` });

/** An object of exactly these members; a name that ends in `?` may be left out. */
function members(properties: Record<string, Schema>, ...examples: object[]): Schema {
  const names = Object.keys(properties);
  return {
    type: 'object',
    additionalProperties: false,
    required: names.filter((name) => !name.endsWith('?')),
    properties: Object.fromEntries(names.map((name) => [name.replace('?', ''), properties[name]])),
    ...(examples.length > 0 ? { examples } : {}),
  };
}

const person = {
  accountId: id,
  name: line(),
  signInName: line(80),
  role: oneOf(ROLES),
  passwordDue: flag,
  hasPin: flag,
};
const account = {
  id,
  name: line(),
  signInName: line(80),
  role: oneOf(ROLES),
  address: maybe(lines(500)),
  active: flag,
  passwordDue: flag,
  passwordExpiresAt: maybe(instant),
  version,
  createdAt: instant,
  updatedAt: instant,
};
const device = {
  id,
  name: line(80),
  state: oneOf(['waiting', 'enrolled', 'revoked']),
  codeExpiresAt: maybe(instant),
  enrolledAt: maybe(instant),
  lastUsedAt: maybe(instant),
  revokedAt: maybe(instant),
  createdAt: instant,
  version,
};
const rosterEntry = { id, accountId: id, duty: oneOf(DUTIES), from: day, to: day, version };
const outOfDate = listOf(members({ title: line(), expiresOn: day }));
const certificate = {
  id,
  accountId: id,
  title: line(),
  number: maybe(line(80)),
  issuedOn: maybe(day),
  expiresOn: maybe(day),
  version,
};

/** What is sent to this module: each schema says the same as its class in shared/wire. */
export const ACCOUNT_REQUESTS: Record<string, Schema> = {
  SignIn: members(
    { signInName: secret, password: secret },
    { signInName: 'ana', password: 'low tide, red buoy' },
  ),
  PasswordChange: members(
    { currentPassword: secret, newPassword: { ...secret, minLength: SHORTEST_PASSWORD } },
    { currentPassword: 'low tide, red buoy', newPassword: 'three herons on a pier' },
  ),
  PinChange: members({ password: secret, pin }, { password: 'low tide, red buoy', pin: '4071' }),
  AccountCreation: members(
    { name: line(), signInName: line(80), role: oneOf(ROLES), 'address?': maybe(lines(500)) },
    { name: 'Ana Ruiz', signInName: 'ana', role: 'staff', address: '12 Elm Street, Ames, IA 50010' },
  ),
  AccountChange: members(
    {
      'name?': line(),
      'signInName?': line(80),
      'role?': oneOf(ROLES),
      'address?': maybe(lines(500)),
      'active?': flag,
    },
    { active: false },
    { role: 'manager', address: null },
  ),
  DeviceCreation: members({ name: line(80) }, { name: 'Dock phone 2' }),
  DeviceEnrolment: members({ code: line(40) }, { code: '7km2-x0pq-9s3t' }),
  PinConfirmation: members(
    { accountId: id, pin, since: instant },
    { accountId: ID, pin: '4071', since: '2026-06-13T11:20:00-05:00' },
  ),
  RosterEntryCreation: members(
    { accountId: id, duty: oneOf(DUTIES), from: day, to: day },
    { accountId: ID, duty: 'shift-lead', from: '2026-06-13', to: '2026-06-14' },
  ),
  RosterEntryChange: members({ 'duty?': oneOf(DUTIES), 'from?': day, 'to?': day }, { to: '2026-06-20' }),
  CertificateCreation: members(
    {
      accountId: id,
      title: line(),
      'number?': maybe(line(80)),
      'issuedOn?': maybe(day),
      'expiresOn?': maybe(day),
    },
    { accountId: ID, title: 'First aid', number: 'FA-2291', issuedOn: '2025-06-01', expiresOn: '2027-06-01' },
  ),
  CertificateChange: members(
    { 'title?': line(), 'number?': maybe(line(80)), 'issuedOn?': maybe(day), 'expiresOn?': maybe(day) },
    { expiresOn: '2028-06-01' },
  ),
};

const AT = '2026-06-13T16:20:00.000Z';
const ANA = {
  accountId: ID,
  name: 'Ana Ruiz',
  signInName: 'ana',
  role: 'staff',
  passwordDue: false,
  hasPin: true,
};
const ANAS = {
  id: ID,
  name: 'Ana Ruiz',
  signInName: 'ana',
  role: 'staff',
  address: '12 Elm Street, Ames, IA 50010',
  active: true,
  passwordDue: true,
  passwordExpiresAt: '2026-06-20T16:20:00.000Z',
  version: 1,
  createdAt: AT,
  updatedAt: AT,
};
const PHONE = {
  id: OTHER_ID,
  name: 'Dock phone 2',
  state: 'waiting',
  codeExpiresAt: '2026-06-13T16:35:00.000Z',
  enrolledAt: null,
  lastUsedAt: null,
  revokedAt: null,
  createdAt: AT,
  version: 1,
};
const ON = {
  id: OTHER_ID,
  accountId: ID,
  duty: 'shift-lead',
  from: '2026-06-13',
  to: '2026-06-14',
  version: 1,
};
const FIRST_AID = {
  id: OTHER_ID,
  accountId: ID,
  title: 'First aid',
  number: 'FA-2291',
  issuedOn: '2024-06-01',
  expiresOn: '2026-06-01',
  version: 1,
};

/** What this module answers with. */
export const ACCOUNT_ANSWERS: Record<string, Schema> = {
  SignedIn: members({ ...person, expiresAt: instant }, { ...ANA, expiresAt: '2026-06-14T04:20:00.000Z' }),
  Session: members(person, ANA),
  Account: members(account, ANAS),
  NewAccount: members(
    {
      ...account,
      oneTimePassword: { type: ['string', 'null'], description: 'Null in the answer to a retry.' },
    },
    { ...ANAS, oneTimePassword: '7km2x-0pq9s-3tw4v-8ybcd' },
  ),
  AccountPage: members({ items: listOf(ref('Account')), next: cursor }, { items: [ANAS], next: null }),
  Device: members(device, PHONE),
  NewDevice: members(
    { ...device, code: { type: ['string', 'null'], description: 'Null in the answer to a retry.' } },
    { ...PHONE, code: '7km2-x0pq-9s3t' },
  ),
  DevicePage: members({ items: listOf(ref('Device')), next: cursor }, { items: [PHONE], next: null }),
  DeviceSelf: members(
    { id, name: line(80), accountId: maybe(id), personName: line() },
    { id: OTHER_ID, name: 'Dock phone 2', accountId: ID, personName: 'Ana Ruiz' },
  ),
  PeopleOnDuty: members(
    { day, people: listOf(members({ accountId: id, personName: line(), duties: listOf(oneOf(DUTIES)) })) },
    { day: '2026-06-13', people: [{ accountId: ID, personName: 'Ana Ruiz', duties: ['shift-lead'] }] },
  ),
  PinConfirmed: members(
    { accountId: id, since: instant, confirmedAt: instant },
    { accountId: ID, since: AT, confirmedAt: '2026-06-13T16:50:00.000Z' },
  ),
  RosterEntry: members(rosterEntry, ON),
  Roster: members(
    { items: listOf(members({ ...rosterEntry, personName: line(), outOfDate })) },
    {
      items: [
        { ...ON, personName: 'Ana Ruiz', outOfDate: [{ title: 'First aid', expiresOn: '2026-06-01' }] },
      ],
    },
  ),
  Certificate: members(certificate, FIRST_AID),
  CertificatePage: members(
    {
      items: listOf(members({ ...certificate, personName: line(), standing: oneOf(STANDINGS) })),
      next: cursor,
    },
    { items: [{ ...FIRST_AID, personName: 'Ana Ruiz', standing: 'out-of-date' }], next: null },
  ),
};
