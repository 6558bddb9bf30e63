import { describe, expect, it } from 'vitest';
import {
  isHeld,
  isNewCause,
  startsHold,
  type HoldCause,
  type HoldsSection,
  type LegalHold,
} from '../../shared/record/legal-hold.js';
import { type Consequence, NOTHING_KNOWN } from '../../shared/record/weigh-consequence.js';

describe('a hold starts', () => {
  it.each<[Partial<Consequence>, HoldCause[]]>([
    [{}, []],
    [{ died: 'no', missing: 'no', beyondFirstAid: 'no', hurt: 'yes' }, []],
    [{ damage: { lowCents: 1, highCents: 9_000_000_00 } }, []],
    [{ died: 'yes' }, ['death']],
    [{ missing: 'yes' }, ['missing']],
    [{ beyondFirstAid: 'yes' }, ['beyond-first-aid']],
    [{ claimed: true }, ['claim']],
    [
      { died: 'yes', missing: 'yes', beyondFirstAid: 'yes', claimed: true },
      ['death', 'missing', 'beyond-first-aid', 'claim'],
    ],
  ])('on %j: %j', (known, causes) => {
    expect(startsHold({ ...NOTHING_KNOWN, ...known })).toEqual(causes);
  });

  const hold = (of: string[], released = false): LegalHold => ({
    id: of.join(),
    cause: 'claim',
    of,
    since: '2026-06-13T16:40:00Z',
    startedBy: 'service',
    custodians: [],
    ...(released && {
      released: {
        counsel: 'Cleo Law',
        releasedOn: '2026-09-01',
        reason: 'Settled.',
        enteredBy: 'Max',
        enteredAt: '2026-09-02T09:00:00Z',
      },
    }),
  });

  it.each<[string, HoldsSection, HoldCause, string[], boolean, boolean]>([
    ['nothing held yet', {}, 'claim', ['k1'], false, true],
    ['held for that', { holds: [hold(['k1'])] }, 'claim', ['k1', 'k2'], true, false],
    ['held for something else', { holds: [hold(['k1'])] }, 'death', [], true, true],
    ['released, and nothing new', { holds: [hold(['k1'], true)] }, 'claim', ['k1'], false, false],
    [
      'released, and a second claim came',
      { holds: [hold(['k1'], true)] },
      'claim',
      ['k1', 'k2'],
      false,
      true,
    ],
    [
      'both released',
      { holds: [hold(['k1'], true), hold(['k1', 'k2'], true)] },
      'claim',
      ['k2'],
      false,
      false,
    ],
  ])('once for each cause: %s', (_what, section, cause, of, held, fresh) => {
    expect([isHeld(section), isNewCause(section, cause, of)]).toEqual([held, fresh]);
  });
});
