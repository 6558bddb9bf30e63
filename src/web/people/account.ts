import { ROLES, type Role } from '../../../shared/kernel/role.js';
import { DUTIES, type Duty } from '../../../shared/wire/accounts-roster.dto.js';
import type { FieldSpec, SpecOption } from '../lists/field-spec.js';
import { people } from '../words/en/people.js';

/** An account as managers and administrators see it. */
export interface Account {
  readonly id: string;
  readonly version: number;
  readonly name: string;
  readonly signInName: string;
  readonly role: Role;
  readonly address: string | null;
  readonly active: boolean;
  readonly passwordDue: boolean;
  readonly passwordExpiresAt: string | null;
  readonly createdAt: string;
}

export type NewAccount = Account & { readonly oneTimePassword: string | null };

export interface RosterLine {
  readonly id: string;
  readonly version: number;
  readonly accountId: string;
  readonly personName: string;
  readonly duty: Duty;
  readonly from: string;
  readonly to: string;
  readonly outOfDate: readonly { readonly title: string; readonly expiresOn: string }[];
}

export interface Certificate {
  readonly id: string;
  readonly version: number;
  readonly accountId: string;
  readonly personName: string;
  readonly title: string;
  readonly number: string | null;
  readonly issuedOn: string | null;
  readonly expiresOn: string | null;
  readonly standing: keyof typeof people.certificates.standings;
}

const { accounts, roster, certificates } = people;

export const accountSpecs: readonly FieldSpec[] = [
  { name: 'name', label: accounts.name, as: 'line', required: true },
  { name: 'signInName', label: accounts.signInName, as: 'line', required: true },
  {
    name: 'role',
    label: accounts.role,
    as: 'one',
    options: ROLES.map((value) => ({ value, label: people.roles[value] })),
    none: accounts.none,
    required: true,
  },
  { name: 'address', label: accounts.address, hint: accounts.addressHint, as: 'text' },
];

export function rosterSpecs(persons: readonly SpecOption[]): readonly FieldSpec[] {
  return [
    {
      name: 'accountId',
      label: roster.person,
      as: 'one',
      options: persons,
      none: roster.none,
      required: true,
    },
    {
      name: 'duty',
      label: roster.duty,
      as: 'one',
      options: DUTIES.map((value) => ({ value, label: roster.duties[value] })),
      none: roster.none,
      required: true,
    },
    { name: 'from', label: roster.firstDay, as: 'day', required: true },
    { name: 'to', label: roster.lastDay, as: 'day', required: true },
  ];
}

export const certificateSpecs: readonly FieldSpec[] = [
  { name: 'title', label: certificates.what, hint: certificates.whatHint, as: 'line', required: true },
  { name: 'number', label: certificates.number, as: 'line' },
  { name: 'issuedOn', label: certificates.issuedOn, as: 'day' },
  { name: 'expiresOn', label: certificates.expiresOn, hint: certificates.expiresHint, as: 'day' },
];
