import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { earliestClock, USUAL_RULES, type LegalCall, type Signing } from '../../shared/decision/decision.js';
import { judgeSigning, type SigningQuestion } from '../../shared/decision/judge-signing.js';
import { lawStanding } from '../../shared/decision/law-standing.js';
import { monthsAfter } from '../../shared/time/months-after.js';
import type { OwedReport } from '../../shared/decision/owed-report.js';
import { nothingKnown, quietGrounding } from '../determination/situation.js';
import {
  aReport,
  BY,
  hoursAfter,
  instant,
  nothingDue,
  reportOf,
  reportsOf,
  undetermined,
} from './reports.js';

const REPORT: Signing = { kind: 'report' };
const NO_REPORT: Signing = { kind: 'no-report' };
const WITH_COUNSEL: Signing = { kind: 'no-report', reason: 'It was not our craft.', counsel: 'J. Vance' };
const wait = (until: number, questions = ['What does the clinic say?']): Signing => ({
  kind: 'wait',
  until: instant(until),
  questions,
});

const CALL: LegalCall = {
  id: 'c1',
  at: instant(hoursAfter(2)),
  with: 'agency',
  who: 'L. Ortiz, boating law office',
  said: 'Nothing is due below the amount.',
  duties: ['us/accident-report'],
  by: BY,
  recordedAt: instant(hoursAfter(2)),
};

function codes(report: OwedReport, signing: Signing, changes: Partial<SigningQuestion> = {}): string[] {
  const question: SigningQuestion = {
    report,
    signing,
    filed: false,
    calls: [],
    changedAt: instant(hoursAfter(0)),
    now: hoursAfter(3),
    today: '2026-11-26',
    rules: USUAL_RULES,
    ...changes,
  };
  return judgeSigning(question).map(({ code }) => code);
}

const DUE = '2026-06-23T11:20:00-05:00';
const AGENCY_READ = aReport({ outcome: 'not-required', dueAt: null, packBasis: 'read-agency' });

describe('what may be signed', () => {
  it.each<[string, OwedReport, Signing, Partial<SigningQuestion>, string[]]>([
    ['a report that is required', aReport(), REPORT, {}, []],
    ['a report that may be required', undetermined(DUE), REPORT, {}, []],
    ['a report that nothing calls for', nothingDue(), REPORT, {}, []],
    ['nothing due, read in the law this year', nothingDue(), NO_REPORT, {}, []],
    ['nothing, while it cannot be told', undetermined(DUE), NO_REPORT, {}, ['NO_REPORT_UNDETERMINED']],
    [
      'nothing, while it cannot be told, whatever counsel says',
      undetermined(DUE),
      WITH_COUNSEL,
      { calls: [CALL] },
      ['NO_REPORT_UNDETERMINED'],
    ],
    ['nothing, although it is required', aReport(), NO_REPORT, {}, ['REASON_MISSING', 'COUNSEL_MISSING']],
    ['nothing, with a reason alone', aReport(), { ...WITH_COUNSEL, counsel: ' ' }, {}, ['COUNSEL_MISSING']],
    ['nothing, with counsel alone', aReport(), { ...WITH_COUNSEL, reason: '' }, {}, ['REASON_MISSING']],
    ['nothing, with a reason and counsel', aReport(), WITH_COUNSEL, {}, []],
    ['nothing due by an agency page alone', AGENCY_READ, NO_REPORT, {}, ['CALL_FIRST']],
    ['nothing due by an agency page and a call', AGENCY_READ, NO_REPORT, { calls: [CALL] }, []],
    [
      'nothing due after a call about another duty',
      AGENCY_READ,
      NO_REPORT,
      { calls: [{ ...CALL, duties: ['us-tx/accident-report'] }] },
      ['CALL_FIRST'],
    ],
    [
      'nothing due after a call about the facts as they were',
      AGENCY_READ,
      NO_REPORT,
      { calls: [CALL], changedAt: instant(hoursAfter(2) + 1) },
      ['CALL_FIRST'],
    ],
    ['nothing due by law read a year ago', nothingDue(), NO_REPORT, { today: '2027-11-25' }, ['CALL_FIRST']],
    [
      'nothing due by law read a year ago, and a call',
      nothingDue(),
      NO_REPORT,
      { today: '2027-11-25', calls: [CALL] },
      [],
    ],
    [
      'nothing to add to a filed report, without a reason',
      nothingDue(),
      NO_REPORT,
      { filed: true },
      ['REASON_MISSING'],
    ],
  ])('%s', (_name, report, signing, changes, expected) => {
    expect(codes(report, signing, changes)).toEqual(expected);
  });

  it('on a call of which nothing is known is a report, or a wait within 48 hours, and never that nothing is due', () => {
    for (const report of reportsOf(nothingKnown())) {
      expect(codes(report, NO_REPORT)).toEqual(['NO_REPORT_UNDETERMINED']);
      expect(codes(report, wait(hoursAfter(48) + 1))).toEqual(['WAIT_PAST_CLOCK']);
      expect(codes(report, REPORT)).toEqual([]);
    }
  });

  it('says in a sentence what to do', () => {
    const details = judgeSigning({
      report: AGENCY_READ,
      signing: NO_REPORT,
      filed: false,
      calls: [],
      changedAt: instant(hoursAfter(0)),
      now: hoursAfter(3),
      today: '2026-11-26',
      rules: USUAL_RULES,
    }).map(({ detail }) => detail);
    expect(details).toEqual([
      'Its rule was read on the agency’s own pages, not in the law. Call the agency or counsel about it, and log who said what, before you sign (Accident report, federal rule).',
    ]);
  });
});

describe('waiting', () => {
  // 33 CFR 173.55(b)(2): 48 hours where a person is injured beyond first aid; (b)(3): otherwise 10 days.
  const hurt = reportOf(
    {
      ...quietGrounding(),
      people: [{ id: 'p1', role: 'operator', vessel: 'A', outcome: 'injured', care: 'unknown' }],
    },
    'us/accident-report',
  );

  it('is about a report that is due in 48 hours, if the care turns out to be beyond first aid', () => {
    expect(hurt.duty.outcome).toBe('undetermined');
    expect(earliestClock(hurt.duty)).toBe(hoursAfter(48));
  });

  it.each<[string, Signing, string[]]>([
    ['to the very clock', wait(hoursAfter(48)), []],
    ['a second past the clock', wait(hoursAfter(48) + 1000), ['WAIT_PAST_CLOCK']],
    ['until now', wait(hoursAfter(3)), ['WAIT_IS_OVER']],
    ['for no question', wait(hoursAfter(12), []), ['WAIT_NAMES_NO_QUESTION']],
  ])('%s', (_name, signing, expected) => {
    expect(codes(hurt, signing)).toEqual(expected);
  });

  it('goes by the sooner clock that an open question could still bring to a required report', () => {
    const sooner = aReport({ dueAtIfRequired: '2026-06-15T11:20:00-05:00' });
    expect(codes(sooner, wait(hoursAfter(48)))).toEqual([]);
    expect(codes(sooner, wait(hoursAfter(49)))).toEqual(['WAIT_PAST_CLOCK']);
  });

  it('is refused where it is due without delay', () => {
    // 33 CFR 173.53(a): without delay, by the quickest means available.
    const missing = reportOf(
      {
        ...quietGrounding(),
        people: [
          {
            id: 'p1',
            role: 'operator',
            vessel: 'A',
            outcome: 'missing',
            missingSince: '2026-06-13T11:20:00-05:00',
          },
        ],
      },
      'us/death-or-disappearance-notice',
    );
    expect(missing.duty).toMatchObject({ outcome: 'required', immediate: true });
    expect(codes(missing, wait(hoursAfter(4)))).toEqual(['WAIT_PAST_CLOCK']);
  });

  it('without a known clock takes a call, and lasts no longer than the lead time', () => {
    const unread = undetermined(null);
    expect(codes(unread, wait(hoursAfter(27)))).toEqual(['WAIT_WITHOUT_CLOCK']);
    expect(codes(unread, wait(hoursAfter(27)), { calls: [CALL] })).toEqual([]);
    expect(codes(unread, wait(hoursAfter(27) + 1), { calls: [CALL] })).toEqual(['WAIT_WITHOUT_CLOCK']);
  });

  it('is for nothing where nothing is due', () => {
    expect(codes(nothingDue(), wait(hoursAfter(12)))).toEqual(['WAIT_FOR_NOTHING']);
  });

  it('to supplement a filed report has no clock', () => {
    expect(codes(aReport(), wait(hoursAfter(1000)), { filed: true })).toEqual([]);
  });

  it('is never allowed past any clock that the duty shows', () => {
    const hours = fc.integer({ min: -400, max: 400 });
    fc.assert(
      fc.property(fc.option(hours), fc.option(hours), hours, hours, (due, possible, end, now) => {
        const at = (hour: number | null): string | null => (hour === null ? null : instant(hoursAfter(hour)));
        const outcome = due === null ? 'undetermined' : 'required';
        const report = aReport({ outcome, dueAt: at(due), dueAtIfRequired: at(possible) });
        const allowed =
          codes(report, wait(hoursAfter(end)), { now: hoursAfter(now), calls: [CALL] }).length === 0;
        const clocks = [due, possible].filter((hour) => hour !== null);
        const mayWait = end > now && (clocks.length > 0 ? clocks.every((c) => end <= c) : end <= now + 24);
        expect(allowed).toBe(mayWait);
      }),
    );
  });
});

describe('how well law is known', () => {
  it.each<[string, Parameters<typeof lawStanding>, boolean]>([
    ['read in the law', ['read-primary', '2026-11-25', '2026-11-25', 12], true],
    ['a day before it is to be read again', ['read-primary', '2026-11-25', '2027-11-24', 12], true],
    ['on the day on which it is to be read again', ['read-primary', '2026-11-25', '2027-11-25', 12], false],
    ['by other settings', ['read-primary', '2026-11-25', '2027-11-25', 18], true],
    ['on pages of an agency', ['read-agency', '2026-11-25', '2026-11-25', 12], false],
    ['in a secondary source', ['read-secondary', '2026-11-25', '2026-11-25', 12], false],
    ['from memory', ['memory', '2026-11-25', '2026-11-25', 12], false],
    ['not read', ['not-read', null, '2026-11-25', 12], false],
    ['of no pack at all', ['read-primary', null, '2026-11-25', 12], false],
  ])('%s', (_name, question, mayDecide) => {
    const standing = lawStanding(...question);
    expect(standing.mayDecide).toBe(mayDecide);
    expect(standing.because === '').toBe(mayDecide);
  });

  it.each([
    ['2026-11-25', 12, '2027-11-25'],
    ['2026-08-31', 6, '2027-02-28'],
    ['2027-08-31', 6, '2028-02-29'],
    ['2028-02-29', 12, '2029-02-28'],
    ['2026-12-31', 2, '2027-02-28'],
    ['2026-03-15', 0, '2026-03-15'],
  ])('%s and %d months are %s', (date, months, expected) => {
    expect(monthsAfter(date, months)).toBe(expected);
  });
});
