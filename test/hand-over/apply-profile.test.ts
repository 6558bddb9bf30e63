import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyProfile } from '../../shared/hand-over/apply-profile.js';
import { type Recipient, RECIPIENTS } from '../../shared/hand-over/hand-over-profile.js';
import { NO_CHOICES, type SenderChoices } from '../../shared/hand-over/sender-choices.js';
import type { IncidentRecord, RecordSections } from '../../shared/record/incident-record.js';
import { listRecordFields } from '../../shared/wire/list-record-fields.js';
import { fullRecord, isReckonedWith, markOf } from './full-record.js';
import { FORMS, profileOf } from './profiles.js';

const apply = (record: IncidentRecord, recipient: Recipient, sender: SenderChoices = NO_CHOICES) =>
  applyProfile(record, FORMS.classify, profileOf(recipient), sender);

const leaves = (record: IncidentRecord, recipient: Recipient, sender?: SenderChoices): string =>
  JSON.stringify(apply(record, recipient, sender).sections);

const recordOf = (sections: Partial<RecordSections>): IncidentRecord => ({
  ...fullRecord(),
  sections: { 'time-and-place': fullRecord().sections['time-and-place'] ?? {}, ...sections },
});

const isMarked = (field: string): boolean => !/\/(id|age)$|\/minor\//.test(field) && !isReckonedWith(field);

describe('a profile laid over a record that says something everywhere', () => {
  const record = fullRecord();
  const rows = RECIPIENTS.flatMap((recipient) => {
    const { decisions } = profileOf(recipient);
    return FORMS.kinds.kinds.map(({ kind, fields }) => ({
      recipient,
      kind,
      fields,
      decision: decisions[kind],
    }));
  });

  it.each(rows)('does for $recipient with $kind what it says', ({ recipient, kind, fields, decision }) => {
    const applied = apply(record, recipient);
    const text = JSON.stringify(applied.sections);
    for (const field of fields.filter(isMarked)) {
      const path = field.slice(field.indexOf(':') + 1).replaceAll('*', 'i1');
      const found = applied.fields.find(
        (one) => `${one.section}:${one.path}` === field.split('*').join('i1'),
      );
      expect(found, field).toMatchObject({ kind, path });
      const bare = kind === 'key' && found?.verdict.reason.startsWith('Nothing of this section');
      const goes = decision?.does === 'goes' && decision.own !== true && bare !== true;
      expect([field, text.includes(`${markOf(field)}"`)]).toEqual([field, goes]);
    }
  });

  it('shows everything to whoever nothing is masked for, so that what is searched for can be found', () => {
    const text = leaves(record, 'counsel');
    for (const field of listRecordFields()) {
      if (isMarked(field)) expect(text).toContain(`${markOf(field)}"`);
    }
  });

  it('lets a field stay that nobody placed', () => {
    const odd = recordOf({ account: { bloodGroup: 'AB' } as never });
    expect(leaves(odd, 'counsel')).not.toContain('AB');
  });
});

describe('what belongs to the recipient', () => {
  const record = recordOf({
    rental: { agreement: 'A-77', renterPerson: 'p1', gear: [{ id: 'g1', what: 'vest', person: 'p2' }] },
    statements: {
      statements: [
        { id: 's1', person: 'p1', words: 'I looked back.' },
        { id: 's2', person: 'p2', words: 'He did not look.' },
      ],
    },
  });
  it.each([
    ['p1', { has: ['A-77', 'I looked back.'], lacks: ['He did not look.', 'vest'] }],
    ['p2', { has: ['He did not look.', 'vest'], lacks: ['A-77', 'I looked back.'] }],
    [undefined, { has: [], lacks: ['A-77', 'I looked back.', 'He did not look.', 'vest'] }],
  ])('goes to renter %s and nothing of others does', (person, { has, lacks }) => {
    const text = leaves(record, 'renter', { ...NO_CHOICES, ...(person === undefined ? {} : { person }) });
    for (const one of has) expect(text).toContain(one);
    for (const one of lacks) expect(text).not.toContain(one);
  });
});

describe('people who may be under age', () => {
  const told = (value: unknown) => ({ value, known: 'told' }) as never;
  const withPerson = (person: object) =>
    recordOf({
      people: { people: [{ id: 'p1', name: 'Tomás Reed', ...person }] },
      account: { whatHappened: told('Tomás fell; TOMÁS REED was pulled out by Ann Lee.') },
    });
  // It happened on 13 June 2026.
  it.each([
    ['a child by age', { age: told(17) }, true],
    ['grown up by age', { age: told(18) }, false],
    ['18 on the day itself', { birthDate: told('2008-06-13') }, false],
    ['18 a day later', { birthDate: told('2008-06-14') }, true],
    ['with a guardian', { age: told(30), minor: { guardian: 'Ann Lee' } }, true],
    ['of an age that nobody said', {}, true],
  ])('%s', (_, person, masked) => {
    const record = withPerson(person);
    const text = leaves(record, 'in-house');
    expect(/Tomás/i.test(text)).toBe(!masked);
    expect(text.includes('"T. R."')).toBe(masked);
    expect(text).toContain('Ann Lee');
    for (const named of ['insurer', 'counsel'] as const)
      expect(leaves(record, named)).toContain('Tomás fell');
  });

  it('are nowhere named, whatever they are called', () => {
    const name = fc.stringMatching(/^[A-Z][a-zß-öø-ÿ'-]{2,9}$/);
    fc.assert(
      fc.property(name, name, (first, last) => {
        const record = recordOf({
          people: { people: [{ id: 'p1', name: `${first} ${last}`, seat: told(`behind ${first}`) }] },
          account: { whatHappened: told(`(${last}) and ${first}: both`) },
        });
        const text = leaves(record, 'in-house');
        for (const part of [first, last]) {
          expect(new RegExp(`(?<![\\p{L}'-])${part}(?![\\p{L}'-])`, 'u').test(text)).toBe(false);
        }
      }),
    );
  });
});

describe('what the sender says beside the profile', () => {
  const record = recordOf({
    people: {
      people: [{ id: 'p1', name: 'Ann', treatments: { value: ['sutures'], known: 'told' } as never }],
    },
  });
  const choosing = (what: string, does: 'goes' | 'stays', reason?: string): SenderChoices => ({
    ...NO_CHOICES,
    choices: [{ what, does, ...(reason === undefined ? {} : { reason }) }],
  });
  const field = (recipient: Recipient, path: string, sender: SenderChoices) =>
    apply(record, recipient, sender).fields.find((one) => one.path === path)?.verdict;

  it.each([
    ['insurer', 'medical', 'choice'],
    ['insurer', 'people:/people/p1/treatments', 'choice'],
    ['renter', 'medical', 'override'],
  ] as const)('lets %s have %s by %s', (recipient, what, by) => {
    const sender = choosing(what, 'goes', 'They asked for it.');
    expect(field(recipient, '/people/p1/treatments', sender)).toEqual({
      does: 'goes',
      by,
      reason: 'They asked for it.',
    });
    expect(leaves(record, recipient, sender)).toContain('sutures');
    expect(leaves(record, recipient)).not.toContain('sutures');
  });

  it('holds back what would go, and a single field against its kind', () => {
    expect(leaves(record, 'counsel', choosing('name', 'stays'))).not.toContain('Ann');
    const both: SenderChoices = {
      ...NO_CHOICES,
      choices: [
        { what: 'name', does: 'stays' },
        { what: 'people:/people/p1/name', does: 'goes' },
      ],
    };
    expect(leaves(record, 'counsel', both)).toContain('Ann');
  });

  it('lets a card number leave for nobody, whoever chose it', () => {
    const paid = recordOf({
      account: { whatHappened: { value: 'paid by 4111 1111 1111 1111', known: 'told' } },
    });
    for (const recipient of RECIPIENTS) {
      expect(leaves(paid, recipient, choosing('narrative', 'goes', 'Because.'))).not.toContain('4111');
    }
  });
});
