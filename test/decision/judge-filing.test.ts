import { describe, expect, it } from 'vitest';
import { standingFilings, type FilingDetails } from '../../shared/decision/filing.js';
import { formOf, judgeFiling, suggestSatisfied } from '../../shared/decision/judge-filing.js';
import type { IncidentFacts } from '../../shared/record/incident-facts.js';
import { determineFacts, nothingKnown, quietGrounding } from '../determination/situation.js';
import { aFiling, hoursAfter, reportsOf, vesselOf } from './reports.js';

const HURT: IncidentFacts = {
  ...quietGrounding(),
  place: { states: ['TX', 'OK'], timeZone: 'America/Chicago' },
  vessels: [vesselOf('A'), vesselOf('B', { stateOfNumber: 'LA' })],
  people: [{ id: 'p1', role: 'operator', vessel: 'A', outcome: 'missing' }],
};

function codes(changes: Partial<FilingDetails>, facts = HURT) {
  return judgeFiling({
    filing: aFiling(changes),
    reports: reportsOf(facts),
    facts,
    states: determineFacts(facts).states,
    filings: [aFiling({ id: 'f0' })],
    now: hoursAfter(48),
  }).map(({ code, pointer }) => `${code} ${pointer}`);
}

const key = (duty: string, vessel: string | null = 'A') => ({ duty, vessel });

describe('a filing', () => {
  it.each<[string, Partial<FilingDetails>, string[]]>([
    // 33 CFR 173.59: to the authority that issued the number, or where it happened if that is another state.
    ['with the state of number and place stands for the federal report', {}, []],
    [
      'with that state stands for its own duty too',
      { satisfies: [key('us/accident-report'), key('us-tx/accident-report')] },
      [],
    ],
    ['with the other state where it may have happened', { jurisdiction: 'us-ok' }, []],
    [
      'with the state of number alone',
      { jurisdiction: 'us-la', satisfies: [key('us/accident-report', 'B')] },
      [],
    ],
    [
      'with a state that has nothing to do with it',
      { jurisdiction: 'us-la' },
      ['FILED_ELSEWHERE /satisfies/0'],
    ],
    [
      'with one state is not made to the other',
      { satisfies: [key('us/accident-report'), key('us-ok/accident-report')] },
      ['FILED_ELSEWHERE /satisfies/1'],
    ],
    [
      'with the Coast Guard stands for no state’s duty',
      { jurisdiction: 'us', satisfies: [key('us/accident-report'), key('us-tx/accident-report')] },
      ['FILED_ELSEWHERE /satisfies/1'],
    ],
    [
      // 33 CFR 173.53 asks for a notice without delay, 173.55 for a report: one does not stand for the other.
      'in writing is no notice',
      { satisfies: [key('us/death-or-disappearance-notice')] },
      ['ANOTHER_FORM /satisfies/0'],
    ],
    ['by phone as a notice is no report', { form: 'notice', way: 'phone' }, ['ANOTHER_FORM /satisfies/0']],
    [
      // 33 CFR 173.53(a): "the nearest reporting authority".
      'as a notice goes to whatever authority is nearest, for both craft in one call',
      {
        form: 'notice',
        way: 'phone',
        jurisdiction: 'us-la',
        satisfies: [key('us/death-or-disappearance-notice'), key('us/death-or-disappearance-notice', 'B')],
      },
      [],
    ],
    [
      // 33 CFR 173.55(a): the operator of each vessel.
      'of one operator is not that of another',
      { satisfies: [key('us/accident-report'), key('us/accident-report', 'B')] },
      ['ONE_OPERATOR_A_REPORT /satisfies'],
    ],
    [
      'of a report that there is not',
      { satisfies: [key('us-la/accident-report')] },
      ['NO_SUCH_REPORT /satisfies/0'],
    ],
    [
      'of a craft that there is not',
      { satisfies: [key('us/accident-report', 'C')] },
      ['NO_SUCH_REPORT /satisfies/0'],
    ],
    [
      'that names no craft where there are two',
      { satisfies: [key('us/accident-report', null)] },
      ['NO_SUCH_REPORT /satisfies/0'],
    ],
    ['of nothing', { satisfies: [] }, ['FILING_FOR_NOTHING /satisfies']],
    ['of tomorrow', { at: '2026-06-15T11:20:01-05:00' }, ['FILING_IN_FUTURE /at']],
    ['of this very moment', { at: '2026-06-15T11:20:00-05:00' }, []],
    ['in place of a wrong one', { replaces: 'f0', remark: 'Never sent.', satisfies: [] }, []],
    [
      'in place of a wrong one, without a word',
      { replaces: 'f0', satisfies: [] },
      ['REMARK_MISSING /remark'],
    ],
    ['in place of none', { replaces: 'f9', remark: 'x' }, ['NO_SUCH_FILING /replaces']],
  ])('%s', (_name, changes, expected) => {
    expect(codes(changes)).toEqual(expected);
  });

  it('of a craft without a number goes to the state where it is mainly used, by the word of whoever files', () => {
    const kayak = { ...quietGrounding(), vessels: [vesselOf('A', { numbered: 'no' })] };
    expect(codes({ jurisdiction: 'us-ok' }, kayak)).toEqual([]);
    const unknown = { ...quietGrounding(), vessels: [vesselOf('A', { numbered: 'unknown' })] };
    expect(codes({ jurisdiction: 'us-ok' }, unknown)).toEqual(['FILED_ELSEWHERE /satisfies/0']);
  });

  it('answers no state’s duty while no state is known', () => {
    const satisfies = [key('state/accident-report', null)];
    expect(codes({ satisfies }, nothingKnown())).toEqual(['FILED_ELSEWHERE /satisfies/0']);
  });

  it('whose place was taken no longer counts', () => {
    const filings = [aFiling({ id: 'f1' }), aFiling({ id: 'f2', replaces: 'f1' }), aFiling({ id: 'f3' })];
    expect(standingFilings(filings).map(({ id }) => id)).toEqual(['f2', 'f3']);
  });
});

describe('what one filing may stand for', () => {
  it.each<[string, 'report' | 'notice', string, string[]]>([
    ['a report to Texas', 'report', 'us-tx', ['us/accident-report', 'us-tx/accident-report']],
    ['a report to Oklahoma', 'report', 'us-ok', ['us/accident-report', 'us-ok/accident-report']],
    [
      'a notice to Oklahoma',
      'notice',
      'us-ok',
      ['us/death-or-disappearance-notice', 'us-ok/immediate-notice'],
    ],
    ['a notice to the Coast Guard', 'notice', 'us', ['us/death-or-disappearance-notice']],
    ['a report to Louisiana', 'report', 'us-la', []],
  ])('%s', (_name, form, jurisdiction, expected) => {
    const states = determineFacts(HURT).states;
    const found = suggestSatisfied({ form, jurisdiction }, 'A', reportsOf(HURT), HURT, states);
    expect(found.map(({ duty }) => duty)).toEqual(expected);
    expect(found.every(({ vessel }) => vessel === 'A')).toBe(true);
  });

  it.each([
    ['accident-report', 'report'],
    ['owner-report', 'report'],
    ['notice', 'notice'],
    ['immediate-notice', 'notice'],
    ['death-or-disappearance-notice', 'notice'],
  ])('%s is a %s', (kind, form) => {
    expect(formOf({ kind })).toBe(form);
  });
});
