import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildCallList, type StationNumber, telOf } from '../../shared/follow-up/build-call-list.js';
import {
  ANSWER_MINUTES,
  type EscalationState,
  nextEscalation,
} from '../../shared/follow-up/next-escalation.js';
import { type OnDuty, orderRoster } from '../../shared/follow-up/order-roster.js';

const WAIT = ANSWER_MINUTES * 60_000;
const asked = (...ids: string[]): EscalationState => ({
  raisedAt: 0,
  asked: ids.map((accountId, place) => ({ accountId, at: place * WAIT })),
  acknowledgedAt: null,
});

describe('whom an urgent task is put to next', () => {
  it.each<[string, EscalationState, string[], number, object]>([
    ['the first, at once', asked(), ['a', 'b'], 0, { next: 'ask', accountId: 'a' }],
    ['nobody while the first may answer', asked('a'), ['a', 'b'], WAIT - 1, { next: 'wait', until: WAIT }],
    [
      'the second when the first has not answered',
      asked('a'),
      ['a', 'b'],
      WAIT,
      { next: 'ask', accountId: 'b' },
    ],
    [
      'the first again after the last',
      asked('a', 'b'),
      ['a', 'b'],
      2 * WAIT,
      { next: 'ask', accountId: 'a' },
    ],
    ['the same again where there is only one', asked('a'), ['a'], WAIT, { next: 'ask', accountId: 'a' }],
    [
      'the next at once when whoever was asked went home',
      asked('a'),
      ['b'],
      1,
      { next: 'ask', accountId: 'b' },
    ],
    [
      'somebody who has just come before anybody twice',
      asked('a', 'b'),
      ['a', 'b', 'c'],
      2 * WAIT,
      { next: 'ask', accountId: 'c' },
    ],
    ['nobody without a roster', asked(), [], 0, { next: 'none', why: 'nobody-on-roster' }],
    [
      'nobody once it is acknowledged',
      { ...asked('a'), acknowledgedAt: 5 },
      ['a', 'b'],
      9 * WAIT,
      { next: 'none', why: 'acknowledged' },
    ],
  ])('%s', (_, state, roster, now, next) => {
    expect(nextEscalation(state, roster, now)).toEqual(next);
  });

  it('reaches everybody once before anybody twice, and never ends unacknowledged', () => {
    const rosters = fc.uniqueArray(fc.constantFrom('a', 'b', 'c', 'd', 'e'), { minLength: 1 });
    fc.assert(
      fc.property(rosters, (roster) => {
        let state = asked();
        for (let turn = 0; turn < 3 * roster.length; turn += 1) {
          const step = nextEscalation(state, roster, turn * WAIT);
          if (step.next !== 'ask') throw new Error(`Turn ${turn}: ${step.next}`);
          state = { ...state, asked: [...state.asked, { accountId: step.accountId, at: turn * WAIT }] };
        }
        const order = state.asked.map(({ accountId }) => accountId);
        expect(order).toEqual([...roster, ...roster, ...roster]);
      }),
    );
  });
});

describe('the order of the roster', () => {
  const people: OnDuty[] = [
    { accountId: '5', role: 'counsel', duties: ['office'] },
    { accountId: '4', role: 'staff', duties: ['dock'] },
    { accountId: '3', role: 'administrator', duties: ['office'] },
    { accountId: '2', role: 'manager', duties: ['office'] },
    { accountId: '1', role: 'staff', duties: ['dock', 'shift-lead'] },
    { accountId: '0', role: 'staff', duties: ['rescue'] },
  ];
  it.each<['shift-lead' | 'manager', string[]]>([
    ['shift-lead', ['1', '2', '3', '0', '4']],
    ['manager', ['2', '1', '3', '0', '4']],
  ])('begins with the owner, a %s, and leaves counsel out', (owner, order) => {
    expect(orderRoster(people, owner)).toEqual(order);
    expect(orderRoster([...people].reverse(), owner)).toEqual(order);
  });
});

describe('the list of whom to call', () => {
  const numbers: StationNumber[] = [
    { of: 'insurer', name: 'Insurer', phone: '1-800-555-0100' },
    { of: 'coast-guard', name: 'Coast Guard', channel: 'VHF 16' },
    { of: 'dispatch', name: 'County dispatch', phone: '+1 (903) 555-0142 x 7', note: 'Ask for marine' },
  ];

  it('begins with emergency services and puts what a notice is about beside those who take it', () => {
    const notice = {
      outcome: 'required',
      kind: 'death-or-disappearance-notice',
      authority: 'the warden',
    } as const;
    const maybe = { outcome: 'undetermined', kind: 'immediate-notice', authority: null } as const;
    const about = ['Give: death or disappearance notice, to the warden', 'May be due: immediate notice'];
    expect(buildCallList(numbers, [notice, maybe])).toMatchObject([
      { name: 'Emergency services', tel: 'tel:911', about: [] },
      { name: 'County dispatch', tel: 'tel:+19035550142;ext=7', note: 'Ask for marine', about },
      { name: 'Coast Guard', tel: null, channel: 'VHF 16', about },
      { name: 'Insurer', tel: 'tel:18005550100', about: [] },
    ]);
  });

  it('puts a number that the law names behind emergency services, and a marine casualty with the Coast Guard alone', () => {
    const sheen = {
      outcome: 'required',
      kind: 'oil-discharge-notice',
      authority: 'the Center',
      telephone: { name: 'National Response Center', number: '800-424-8802' },
    } as const;
    const casualty = { outcome: 'undetermined', kind: 'marine-casualty-notice', authority: null } as const;
    expect(buildCallList(numbers, [sheen, casualty])).toMatchObject([
      { name: 'Emergency services' },
      { name: 'National Response Center', tel: 'tel:8004248802', about: ['Give: oil discharge notice'] },
      { name: 'County dispatch', about: [] },
      { name: 'Coast Guard', about: ['May be due: marine casualty notice'] },
      { name: 'Insurer' },
    ]);
  });

  // RFC 3966: digits, a leading + for a global number, ;ext= for an extension.
  it.each([
    ['903.555.0142', 'tel:9035550142'],
    ['+1 903 555 0142', 'tel:+19035550142'],
    ['903-555-0142 ext. 12', 'tel:9035550142;ext=12'],
    ['911', 'tel:911'],
  ])('%s is %s', (phone, tel) => {
    expect(telOf(phone)).toBe(tel);
  });
});
