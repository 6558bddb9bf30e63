import { describe, expect, it } from 'vitest';
import { USUAL_RULES } from '../../shared/decision/decision.js';
import {
  operatorChange,
  type OperatorNotice,
  proposeOperatorNotice,
  type OperatorQuestion,
} from '../../shared/decision/operator-notice.js';
import { quietGrounding } from '../determination/situation.js';
import { aReport, BY, hoursAfter, instant, nothingDue, vesselOf } from './reports.js';

const notice = (changes: Partial<OperatorNotice> = {}): OperatorNotice => ({
  id: 'n1',
  vessel: 'A',
  at: instant(hoursAfter(1)),
  told: 'yes',
  toldBy: 'Max',
  way: 'in person',
  saysFiled: 'unknown',
  by: BY,
  recordedAt: instant(hoursAfter(1)),
  ...changes,
});

const person = (outcome: 'died' | 'missing' | 'not-back' | 'unhurt', vessel?: string) => ({
  id: 'p2',
  role: 'passenger' as const,
  outcome,
  ...(vessel === undefined ? {} : { vessel }),
});

const IN_48_H = aReport({ dueAt: instant(hoursAfter(48)) });

function propose(hours: number, changes: Partial<OperatorQuestion> = {}) {
  return proposeOperatorNotice({
    report: IN_48_H,
    facts: quietGrounding(),
    notices: [],
    filed: false,
    now: hoursAfter(hours),
    rules: USUAL_RULES,
    ...changes,
  });
}

const with_ = (...people: ReturnType<typeof person>[]): Partial<OperatorQuestion> => ({
  facts: { ...quietGrounding(), people },
});

describe('what is proposed about the customer who drove', () => {
  it.each<[string, number, Partial<OperatorQuestion>, string | undefined]>([
    ['to tell them', 3, {}, 'TELL_OPERATOR'],
    [
      'to tell them, when it was noted that nobody did',
      3,
      { notices: [notice({ told: 'no' })] },
      'TELL_OPERATOR',
    ],
    ['to ask, once they were told', 3, { notices: [notice()] }, 'ASK_OPERATOR'],
    [
      'to confirm, once they say that they filed',
      3,
      { notices: [notice({ saysFiled: 'yes' })] },
      'CONFIRM_FILING',
    ],
    // 33 CFR 173.55(c): the owner, when the operator cannot submit the report.
    [
      'the owner’s own report, once they say that they did not',
      3,
      { notices: [notice({ saysFiled: 'no' })] },
      'OWNER_REPORTS',
    ],
    ['the owner’s own report at the lead time', 24, { notices: [notice()] }, 'OWNER_REPORTS'],
    [
      'the owner’s own report where the operator cannot',
      3,
      { report: aReport({}, { who: 'owner' }) },
      'OWNER_REPORTS',
    ],
    [
      'the owner’s own report where no clock is known',
      3,
      { report: aReport({ dueAt: null }) },
      'OWNER_REPORTS',
    ],
    ['no notice after a death aboard', 3, with_(person('died', 'A')), 'OWNER_REPORTS'],
    ['no notice while somebody of that craft is missing', 3, with_(person('missing', 'A')), 'OWNER_REPORTS'],
    [
      'no notice while somebody of that craft is not back',
      3,
      with_(person('not-back', 'A')),
      'OWNER_REPORTS',
    ],
    ['no notice while nobody knows whose craft the dead was on', 3, with_(person('died')), 'OWNER_REPORTS'],
    ['a notice where somebody of another craft died', 3, with_(person('died', 'B')), 'TELL_OPERATOR'],
    ['nothing once it is filed', 30, { filed: true }, undefined],
    ['nothing where nothing is due', 30, { report: nothingDue() }, undefined],
    ['nothing for a notice', 3, { report: aReport({ kind: 'immediate-notice' }) }, undefined],
    [
      'nothing for staff who drove',
      3,
      { facts: { ...quietGrounding(), vessels: [vesselOf('A', { use: 'staff-operated' })] } },
      undefined,
    ],
  ])('%s', (_name, hours, changes, code) => {
    expect(propose(hours, changes)?.code).toBe(code);
  });

  it('after a death says to send the family nothing', () => {
    expect(propose(3, with_(person('died', 'A')))?.text).toBe(
      'Somebody aboard died, is missing or is not back: send the family no notice. File the owner’s own report, on what is known (33 CFR 173.55(c)).',
    );
  });

  it('at the lead time does not rest on a word that nobody confirmed', () => {
    expect(propose(24, { notices: [notice({ saysFiled: 'yes' })] })?.text).toContain(
      'Unconfirmed by now: File the owner',
    );
  });
});

describe('the operator’s word', () => {
  it.each<[string, OperatorNotice['saysFiled'][], OperatorNotice['saysFiled'], boolean]>([
    ['a first yes', [], 'yes', true],
    ['a first no', [], 'no', true],
    ['nothing said', [], 'unknown', false],
    ['the same again', ['yes'], 'yes', false],
    ['the same again after nothing', ['yes', 'unknown'], 'yes', false],
    ['a yes taken back', ['yes'], 'no', true],
    ['nothing said after a yes', ['yes'], 'unknown', false],
  ])('%s', (_name, before, saysFiled, changes) => {
    const change = operatorChange(
      before.map((one) => ({ saysFiled: one })),
      { saysFiled },
    );
    expect(change !== null).toBe(changes);
  });

  it('is told as what it is', () => {
    expect(operatorChange([], { saysFiled: 'yes', filedAt: '2026-06-14T09:00:00-05:00' })?.text).toBe(
      'The operator says that the report was filed at 2026-06-14T09:00:00-05:00: nobody has confirmed that yet.',
    );
  });
});
