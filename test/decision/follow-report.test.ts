import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type DecisionBook,
  followReport,
  reportState,
  type ReportState,
  stateMarks,
} from '../../shared/decision/follow-report.js';
import type { OwedReport } from '../../shared/decision/owed-report.js';
import { reopenForOperator, reopenReports } from '../../shared/decision/reopen-reports.js';
import {
  aDecision,
  aFiling,
  aReopening,
  aReport,
  hoursAfter,
  instant,
  nothingDue,
  undetermined,
} from './reports.js';

const EMPTY: DecisionBook = { decisions: [], reopenings: [], filings: [] };
const book = (changes: Partial<DecisionBook>): DecisionBook => ({ ...EMPTY, ...changes });
const wait = aDecision({ kind: 'wait', until: instant(hoursAfter(24)), questions: ['What care?'] });
const sign = aDecision({ kind: 'report' });

function stateOf(report: OwedReport, changes: Partial<DecisionBook>, hours: number): ReportState {
  return reportState(stateMarks(report, followReport(report, [report], book(changes))), hoursAfter(hours));
}

const IN_48_H = aReport({ dueAt: instant(hoursAfter(48)) });
const MAYBE = undetermined(instant(hoursAfter(48)));
const AT_ONCE = aReport({ dueAt: instant(hoursAfter(0)), immediate: true });
const MAYBE_AT_ONCE = aReport({
  outcome: 'undetermined',
  dueAt: null,
  dueAtIfRequired: instant(hoursAfter(0)),
  immediate: true,
});
const filed = { filings: [aFiling()] };
const stale = { ...filed, reopenings: [aReopening({ filing: 'f1' })] };

describe('the state of a report', () => {
  it.each<[string, OwedReport, Partial<DecisionBook>, number, ReportState]>([
    ['nothing signed', IN_48_H, {}, 3, 'open'],
    ['nothing signed, at the clock', IN_48_H, {}, 48, 'open'],
    ['nothing signed, past the clock', IN_48_H, {}, 48.01, 'overdue'],
    ['signed, not filed', IN_48_H, { decisions: [sign] }, 3, 'decided'],
    ['signed, not filed past the clock', IN_48_H, { decisions: [sign] }, 49, 'overdue'],
    ['waiting', MAYBE, { decisions: [wait] }, 23, 'waiting'],
    ['the wait is over', MAYBE, { decisions: [wait] }, 24, 'open'],
    ['the wait is over and the clock too', MAYBE, { decisions: [wait] }, 49, 'overdue'],
    ['may be required, past its earliest clock', MAYBE, {}, 49, 'overdue'],
    ['required without delay', AT_ONCE, {}, 1, 'overdue'],
    ['perhaps required without delay', MAYBE_AT_ONCE, {}, 1, 'open'],
    ['signed that nothing is due, with counsel', IN_48_H, { decisions: [aDecision()] }, 49, 'decided'],
    ['nothing due and nothing signed', nothingDue(), {}, 500, 'open'],
    ['filed', IN_48_H, filed, 49, 'filed'],
    ['filed, and changed', IN_48_H, stale, 49, 'supplement-due'],
    [
      'filed, changed and supplemented',
      IN_48_H,
      { ...stale, filings: [aFiling(), aFiling({ id: 'f2' })] },
      49,
      'filed',
    ],
    [
      'filed, changed, and signed that nothing is to be added',
      IN_48_H,
      { ...stale, decisions: [aDecision({ answers: 'r1' })] },
      49,
      'filed',
    ],
    [
      'filed, changed, and signed to report',
      IN_48_H,
      { ...stale, decisions: [aDecision({ kind: 'report', answers: 'r1' })] },
      49,
      'supplement-due',
    ],
    ['signed, filed and changed', IN_48_H, { ...stale, decisions: [aDecision()] }, 49, 'supplement-due'],
    [
      'filed by mistake, and that said',
      IN_48_H,
      { filings: [aFiling(), aFiling({ id: 'f2', replaces: 'f1', satisfies: [] })] },
      3,
      'open',
    ],
    [
      'signed and reopened',
      nothingDue(),
      { decisions: [aDecision()], reopenings: [aReopening({ decision: 'd1' })] },
      3,
      'open',
    ],
    [
      'signed, reopened and signed again',
      nothingDue(),
      {
        decisions: [aDecision(), aDecision({ id: 'd2' })],
        reopenings: [aReopening({ decision: 'd1' })],
      },
      3,
      'decided',
    ],
    ['signed for another craft', IN_48_H, { decisions: [aDecision({ vessel: 'B' })] }, 3, 'open'],
    ['filed for another craft', IN_48_H, { filings: [aFiling({ satisfies: [] })] }, 3, 'open'],
    ['signed before the craft had a name', IN_48_H, { decisions: [{ ...sign, vessel: null }] }, 3, 'decided'],
  ])('%s', (_name, report, changes, hours, expected) => {
    expect(stateOf(report, changes, hours)).toBe(expected);
  });

  it('is never quiet past the clock of what is required and neither filed nor signed away', () => {
    const hour = fc.integer({ min: -100, max: 400 });
    fc.assert(
      fc.property(hour, hour, fc.constantFrom([], [sign], [wait]), (due, now, decisions) => {
        const report = aReport({ dueAt: instant(hoursAfter(due)) });
        const overdue = stateOf(report, { decisions }, now) === 'overdue';
        expect(overdue).toBe(now > due);
      }),
    );
  });
});

describe('reopening', () => {
  const signed = book({ decisions: [aDecision()] });

  it('does not happen where nothing was signed or filed', () => {
    expect(reopenReports([nothingDue()], [IN_48_H], EMPTY)).toEqual([]);
  });

  it('does not happen where nothing changed that bears on it', () => {
    expect(reopenReports([nothingDue()], [nothingDue()], signed)).toEqual([]);
  });

  it('names the decision and what changed', () => {
    expect(reopenReports([nothingDue()], [IN_48_H], signed)).toMatchObject([
      {
        duty: 'us/accident-report',
        vessel: 'A',
        decision: 'd1',
        changes: [{ what: 'outcome' }, { what: 'deadline' }],
      },
    ]);
  });

  it('of what was filed names the filing', () => {
    const [reopening] = reopenReports([IN_48_H], [AT_ONCE], book({ ...filed, decisions: [sign] }));
    expect(reopening).toMatchObject({ decision: 'd1', filing: 'f1' });
  });

  it('says again what changes while it is open', () => {
    const open = book({ decisions: [aDecision()], reopenings: [aReopening({ decision: 'd1' })] });
    expect(reopenReports([IN_48_H], [AT_ONCE], open)).toMatchObject([{ decision: 'd1' }]);
    const standing = followReport(IN_48_H, [IN_48_H], open);
    expect(standing).toMatchObject({ decision: null, reopenings: [{ id: 'r1' }] });
  });

  it('tells of a report that is new beside one that was decided, unless nothing is due on it', () => {
    const texas = (outcome: 'required' | 'not-required') =>
      aReport({ id: 'us-tx/accident-report', jurisdiction: 'us-tx', outcome });
    const before = [nothingDue()];
    expect(reopenReports(before, [nothingDue(), texas('required')], signed)).toEqual([
      {
        duty: 'us-tx/accident-report',
        vessel: 'A',
        changes: [{ what: 'appeared', text: 'Accident report, Texas: not called for before. Required.' }],
      },
    ]);
    expect(reopenReports(before, [nothingDue(), texas('not-required')], signed)).toEqual([]);
  });

  it('tells of a decided or filed report that is not called for any more', () => {
    expect(reopenReports([IN_48_H], [], signed)).toMatchObject([
      { decision: 'd1', changes: [{ what: 'gone' }] },
    ]);
    expect(reopenReports([IN_48_H], [], book(filed))).toMatchObject([
      { filing: 'f1', changes: [{ what: 'gone' }] },
    ]);
  });

  it('by the operator’s word is of decided reports that are not filed', () => {
    const change = { what: 'operator-says', text: 'The operator says that it was filed.' } as const;
    const reports = [IN_48_H];
    expect(reopenForOperator(change, 'A', reports, signed)).toMatchObject([
      { decision: 'd1', changes: [change] },
    ]);
    expect(reopenForOperator(change, 'B', reports, signed)).toEqual([]);
    expect(reopenForOperator(change, 'A', reports, EMPTY)).toEqual([]);
    expect(reopenForOperator(change, 'A', reports, book({ ...filed, decisions: [sign] }))).toEqual([]);
  });
});

// 33 CFR 173.55(a): each of its grounds makes the report required; what was filed tells those that were known.
describe('a further ground for a report that is required anyway', () => {
  const ground = (trigger: string, value: 'true' | 'unknown') => ({ trigger, value, text: `${trigger}.` });
  const hurt = aReport({ reasons: [ground('needs-beyond-first-aid', 'true'), ground('death', 'unknown')] });
  const died = aReport({ reasons: [ground('needs-beyond-first-aid', 'true'), ground('death', 'true')] });

  it('is to be supplemented where the report was filed, and said once', () => {
    const [reopening, ...others] = reopenReports([hurt], [died], book(filed));
    expect(reopening?.changes).toEqual([
      { what: 'ground', text: 'A further ground for it is now known. death.' },
    ]);
    expect(others).toEqual([]);
    expect(reopenReports([died], [died], book(filed))).toEqual([]);
  });

  it('reopens nothing where it was signed and is still to be filed, and nothing when it goes away', () => {
    expect(reopenReports([hurt], [died], book({ decisions: [sign] }))).toEqual([]);
    expect(reopenReports([died], [hurt], book(filed))).toEqual([]);
  });
});
