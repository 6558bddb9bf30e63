import { describe, expect, it } from 'vitest';
import type { Known } from '../../shared/call/known.js';
import type { Stamp } from '../../shared/call/stamp.js';
import type { Ternary } from '../../shared/kernel/truth.js';
import type { Contact } from '../../shared/record/account-sections.js';
import type { IncidentRecord } from '../../shared/record/incident-record.js';
import { readClaim } from '../../shared/record/read-claim.js';

const says = (value: Ternary): Known<Ternary> => ({ value, known: 'read-off', by: 'letter' });
const came = (at: string): Stamp => ({ at, how: 'entered' });
const record = (contacts: Contact[]): IncidentRecord => ({
  incident: {
    reference: '2026-0042',
    openedAt: '2026-06-13T16:40:00Z',
    status: 'open',
    timeZone: 'America/Chicago',
  },
  sections: { contacts: { contacts }, people: { people: [{ id: 'p1', name: 'Ann Diver' }] } },
});
const NONE = { claimed: false, entries: [], first: null, unclear: [], mailStopped: [] };

describe('a claim', () => {
  it.each<[string, Contact[], Partial<ReturnType<typeof readClaim>>]>([
    ['nothing was said', [], {}],
    ['a call without a demand', [{ id: 'k1', writtenDemand: says('no') }], {}],
    ['what we wrote ourselves', [{ id: 'k1', direction: 'out', writtenDemand: says('yes') }], {}],
    ['perhaps a demand', [{ id: 'k1', writtenDemand: says('unknown') }], { unclear: ['k1'] }],
    [
      'two demands: the earlier counts, in whatever order they were entered',
      [
        { id: 'k1', at: came('2026-07-02T09:00:00-05:00'), name: 'Bo', writtenDemand: says('yes') },
        { id: 'k2', at: came('2026-07-01T09:00:00-05:00'), party: 'insurer', writtenDemand: says('yes') },
      ],
      {
        claimed: true,
        entries: ['k1', 'k2'],
        first: { contact: 'k2', at: '2026-07-01T14:00:00.000Z', from: null, party: 'insurer' },
      },
    ],
    [
      'a demand of an unknown day may be the earlier one',
      [
        {
          id: 'k1',
          at: came('2026-07-02T09:00:00Z'),
          name: 'Bo',
          party: 'renter',
          writtenDemand: says('yes'),
        },
        { id: 'k2', name: 'Cy', writtenDemand: says('yes') },
      ],
      {
        claimed: true,
        entries: ['k1', 'k2'],
        first: { contact: 'k1', at: '2026-07-02T09:00:00.000Z', from: 'Bo', party: 'renter' },
        unclear: ['k2'],
      },
    ],
    [
      'the only one, of an unknown day',
      [{ id: 'k1', name: 'Bo', writtenDemand: says('yes') }],
      { claimed: true, entries: ['k1'], first: { contact: 'k1', at: null, from: 'Bo', party: null } },
    ],
  ])('%s', (_what, contacts, expected) => {
    expect(readClaim(record(contacts))).toEqual({ ...NONE, ...expected });
  });

  it.each<[string, Omit<Contact, 'id'>, { person: string | null; name: string | null }]>([
    ['for a person who is listed', { party: 'lawyer', person: 'p1' }, { person: 'p1', name: 'Ann Diver' }],
    ['for somebody else', { party: 'lawyer', name: 'L. Law', speaksFor: 'Cy' }, { person: null, name: 'Cy' }],
    ['said by the client', { party: 'renter', name: 'Bo' }, { person: null, name: 'Bo' }],
    // The lawyer's own name is no client's: nobody is known, and everybody's mail stops.
    ['for nobody knows whom', { party: 'lawyer', name: 'L. Law' }, { person: null, name: null }],
  ])('a lawyer stops the automatic mail: %s', (_what, contact, stopped) => {
    const { claimed, mailStopped } = readClaim(record([{ id: 'k1', ...contact, lawyerSpeaks: says('yes') }]));
    expect({ claimed, mailStopped }).toEqual({ claimed: true, mailStopped: [{ contact: 'k1', ...stopped }] });
  });
});
