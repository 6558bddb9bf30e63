import { describe, expect, it } from 'vitest';
import { applyProfile } from '../../shared/hand-over/apply-profile.js';
import { findCautions } from '../../shared/hand-over/find-cautions.js';
import { findSensitiveText } from '../../shared/hand-over/find-sensitive-text.js';
import type { Recipient } from '../../shared/hand-over/hand-over-profile.js';
import { NO_CHOICES, type SenderChoices } from '../../shared/hand-over/sender-choices.js';
import { fullRecord } from './full-record.js';
import { FORMS, profileOf } from './profiles.js';

describe('what of a text may tell too much', () => {
  it.each([
    ['She got eleven stitches at the clinic.', ['medical:stitches']],
    ['La llevaron en ambulancia.', ['medical:ambulancia']],
    ['Ann Lee, DOB 3/14/1987.', ['birth-date:DOB 3/14/1987']],
    ['She was born on the 14 March 1987 here.', ['birth-date:born on the 14 March 1987']],
    ['Nacido el 14 de marzo de 1987.', ['birth-date:Nacido el 14 de marzo de 1987']],
    ['He said 1987-03-14 when asked.', ['birth-date:1987-03-14']],
    ['Call him at (903) 555-0117.', ['reach:(903) 555-0117']],
    ['Write to ann.lee@example.com please', ['reach:ann.lee@example.com']],
    ['Shown: driver license TX 40718265.', ['identity-paper:license TX 40718265']],
  ])('is found in "%s"', (text, found) => {
    expect(findSensitiveText(text, 2026).map(({ kind, said }) => `${kind}:${said}`)).toEqual(found);
  });

  it.each([
    'He did not see the buoy and turned left at 14:30.',
    'On 13 June 2026 the water was calm.',
    'Hull number ZZB00043C626, slip 4, 300 feet off the dock.',
    'The renter was told twice, 06/12/2026 and on the day.',
    'The tow line was cast off, and the burner of the grill was on.',
  ])('is not in "%s"', (text) => {
    expect(findSensitiveText(text, 2026)).toEqual([]);
  });
});

describe('the texts to be read before they leave', () => {
  const words = 'She needed surgery; her number is 903-555-0117.';
  const record = {
    ...fullRecord(),
    sections: {
      account: { whatHappened: { value: words, known: 'told' } },
      timeline: { entries: [{ id: 't1', what: 'Paramedics came at ten.' }] },
      'emergency-response': { calls: [{ id: 'c1', to: 'Coast Guard', number: '903-555 0199' }] },
    },
  } as never;
  const cautions = (recipient: Recipient, sender: SenderChoices = NO_CHOICES) => {
    const { fields } = applyProfile(record, FORMS.classify, profileOf(recipient), sender);
    return findCautions(fields, 2026, profileOf(recipient), sender).map(
      ({ path, tells, said }) => `${path} ${tells} ${said}`,
    );
  };

  it.each([
    ['counsel', []],
    ['renter', []],
    ['insurer', ['/whatHappened medical surgery', '/entries/t1/what medical Paramedics']],
    [
      'in-house',
      [
        '/whatHappened medical surgery',
        '/whatHappened reach 903-555-0117',
        '/entries/t1/what medical Paramedics',
      ],
    ],
  ] as [Recipient, string[]][])('are for %s those that tell what stays: %j', (recipient, expected) => {
    expect(cautions(recipient)).toEqual(expected);
  });

  it('are none once they are held back, or once what they tell leaves anyway', () => {
    const held = { what: 'account:/whatHappened', does: 'stays' } as const;
    const timeline = '/entries/t1/what medical Paramedics';
    expect(cautions('insurer', { ...NO_CHOICES, choices: [held] })).toEqual([timeline]);
    const chosen = { what: 'medical', does: 'goes' } as const;
    expect(cautions('insurer', { ...NO_CHOICES, choices: [chosen] })).toEqual([]);
  });
});
