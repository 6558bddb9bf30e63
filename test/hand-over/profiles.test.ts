import { describe, expect, it } from 'vitest';
import { checkProfiles } from '../../shared/hand-over/check-profiles.js';
import { ATTACHMENTS, RECIPIENTS } from '../../shared/hand-over/hand-over-profile.js';
import { listRecordFields } from '../../shared/wire/list-record-fields.js';
import { FORMS, profileOf } from './profiles.js';

const FIELDS = listRecordFields();

describe('the profiles of a hand-over', () => {
  it('leave nothing undecided: every field, every attachment, every recipient', () => {
    expect(FIELDS.length).toBeGreaterThan(350);
    expect(checkProfiles(FIELDS, FORMS.kinds, FORMS.profiles)).toEqual([]);
  });

  it('fail on a new field without a decision, and on one that is gone', () => {
    const [first = ''] = FIELDS;
    expect(checkProfiles([...FIELDS, 'people:/people/*/bloodGroup'], FORMS.kinds, FORMS.profiles)).toEqual([
      expect.stringContaining('people:/people/*/bloodGroup'),
    ]);
    expect(checkProfiles(FIELDS.slice(1), FORMS.kinds, FORMS.profiles)).toEqual([
      expect.stringContaining(first),
    ]);
  });

  it('fail on a profile that is missing, twice there, or decides too little or too much', () => {
    const insurer = profileOf('insurer');
    const { privileged, ...rest } = insurer.decisions;
    expect(privileged).toBeDefined();
    const others = FORMS.profiles.filter((one) => one !== insurer);
    const faults = (changed: object) =>
      checkProfiles(FIELDS, FORMS.kinds, [...others, { ...insurer, ...changed }]);
    expect(faults({ decisions: rest })).toEqual([expect.stringContaining('does not decide privileged')]);
    expect(faults({ decisions: { ...insurer.decisions, luck: privileged } })).toEqual([
      expect.stringContaining('decides luck'),
    ]);
    expect(checkProfiles(FIELDS, FORMS.kinds, others)).toEqual([expect.stringContaining('insurer')]);
  });

  // What each profile lets go of each kind, written down a second time and by hand: a slip in either is seen.
  const EXPECTED: Readonly<Record<string, string>> = {
    privileged: 'stays goes stays stays stays stays',
    determination: 'choice goes stays stays stays goes',
    decision: 'choice goes stays stays stays goes',
    task: 'choice goes stays stays stays goes',
    pattern: 'choice goes stays stays stays goes',
    name: 'goes goes choice own own goes',
    reach: 'goes goes choice stays stays stays',
    'birth-date': 'goes goes choice stays stays year',
    medical: 'choice goes choice stays stays stays',
    'identity-paper': 'last-four goes choice stays stays last-four',
    'statement-words': 'goes goes choice own own goes',
    notice: 'choice goes choice own stays goes',
    rental: 'goes goes choice own stays goes',
    'filed-report': 'choice goes goes stays stays goes',
    'restricted-file': 'choice goes choice stays stays stays',
    stranger: 'blurred goes blurred blurred blurred blurred',
    'earlier-value': 'stays goes stays stays stays stays',
  };
  it.each(Object.entries(EXPECTED))('decide %s as the house means it', (kind, row) => {
    const said = RECIPIENTS.map((recipient) => {
      const decision = profileOf(recipient).decisions[kind];
      if (decision?.does === 'masked') return decision.how;
      if (decision?.does === 'goes') return decision.own === true ? 'own' : 'goes';
      return decision?.choice === true ? 'choice' : decision?.does;
    });
    expect(said.join(' ')).toBe(row);
  });

  it('give privileged notes to counsel alone, and names of minors in full to insurer and counsel alone', () => {
    const going = RECIPIENTS.filter((one) => profileOf(one).decisions['privileged']?.does === 'goes');
    expect(going).toEqual(['counsel']);
    expect(RECIPIENTS.filter((one) => profileOf(one).minors === 'named')).toEqual(['insurer', 'counsel']);
    expect(ATTACHMENTS).toContain('privileged');
  });
});
