import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { earliestClock, USUAL_RULES } from '../../shared/decision/decision.js';
import { proposeDecision, type ProposalQuestion } from '../../shared/decision/propose-decision.js';
import { judgeSigning } from '../../shared/decision/judge-signing.js';
import type { OwedReport } from '../../shared/decision/owed-report.js';
import { quietGrounding } from '../determination/situation.js';
import { aDecision, aReport, hoursAfter, instant, nothingDue, reportOf, undetermined } from './reports.js';

function propose(report: OwedReport, hours: number, changes: Partial<ProposalQuestion> = {}) {
  return proposeDecision({
    report,
    filed: false,
    supplementDue: false,
    decision: null,
    callFirst: '',
    knownAt: instant(hoursAfter(0)),
    now: hoursAfter(hours),
    rules: USUAL_RULES,
    ...changes,
  });
}

const IN_48_H = instant(hoursAfter(48));
const WAIT = aDecision({ kind: 'wait', until: instant(hoursAfter(24)), questions: ['What care?'] });

describe('the proposal', () => {
  it.each<[string, OwedReport, number, Partial<ProposalQuestion>, string | undefined]>([
    ['required, with time', aReport({ dueAt: IN_48_H }), 23.9, {}, 'REPORT'],
    ['required, at the lead time', aReport({ dueAt: IN_48_H }), 24, {}, 'LEAD_TIME'],
    [
      'required, at a lead time of its own',
      aReport({ dueAt: IN_48_H }),
      12,
      { rules: { ...USUAL_RULES, leadHours: 36 } },
      'LEAD_TIME',
    ],
    ['required, at the clock', aReport({ dueAt: IN_48_H }), 48, {}, 'LEAD_TIME'],
    ['required, past the clock', aReport({ dueAt: IN_48_H }), 48.1, {}, 'LIMIT_PASSED'],
    [
      'required, known when the clock had passed',
      aReport({ dueAt: IN_48_H }),
      168,
      { knownAt: instant(hoursAfter(168)) },
      'LIMIT_PASSED_BEFORE_KNOWN',
    ],
    [
      'required without delay',
      aReport({ dueAt: instant(hoursAfter(0)), immediate: true }),
      1,
      {},
      'WITHOUT_DELAY',
    ],
    ['not known, with time', undetermined(IN_48_H), 3, {}, 'WAIT_FOR_ANSWERS'],
    ['not known, at the lead time', undetermined(IN_48_H), 24, {}, 'LEAD_TIME'],
    ['not known, past the clock', undetermined(IN_48_H), 49, {}, 'LIMIT_PASSED'],
    ['not known, without a clock', undetermined(null), 3, {}, 'ASK_NOW'],
    ['nothing due', nothingDue(), 3, {}, 'NOTHING_DUE'],
    ['filed', aReport({ dueAt: IN_48_H }), 49, { filed: true }, undefined],
    ['signed away', nothingDue(), 3, { decision: aDecision() }, undefined],
    ['waited for', undetermined(IN_48_H), 3, { decision: WAIT }, undefined],
    ['no longer waited for', undetermined(IN_48_H), 24, { decision: WAIT }, 'LEAD_TIME'],
    [
      'filed, and changed since',
      aReport({ dueAt: IN_48_H }),
      49,
      { filed: true, supplementDue: true },
      'SUPPLEMENT',
    ],
  ])('on a report that is %s', (_name, report, hours, changes, code) => {
    expect(propose(report, hours, changes)?.code).toBe(code);
  });

  it('that nothing is due tells of the call that comes first where nobody here has read the law', () => {
    const callFirst = 'Its rule was read in a secondary source, not in the law.';
    expect(propose(nothingDue(), 3, { callFirst })?.text).toBe(
      `No report is due on the facts as they stand. ${callFirst} Call the agency or counsel and log it, then sign.`,
    );
  });

  it('after stitches a week later says that the limit had passed before we knew', () => {
    // 33 CFR 173.55(b)(2): within 48 hours if a person is injured and needs treatment beyond first aid.
    const stitches = reportOf(
      {
        ...quietGrounding(),
        people: [{ id: 'p1', role: 'operator', vessel: 'A', outcome: 'injured', care: 'beyond-first-aid' }],
      },
      'us/accident-report',
    );
    expect(earliestClock(stitches.duty)).toBe(hoursAfter(48));
    expect(propose(stitches, 168, { knownAt: instant(hoursAfter(168)) })).toEqual({
      code: 'LIMIT_PASSED_BEFORE_KNOWN',
      kind: 'report',
      text: 'The limit passed before we knew, on Mon 15 June 11:20: report now.',
      until: '2026-06-15T11:20:00-05:00',
    });
  });

  it('says where it is not known whether a report is due', () => {
    expect(propose(undetermined('2026-06-15T11:20:00-05:00'), 30)?.text).toBe(
      'If it is required, it is due by Mon 15 June 11:20: report now, on what is known, and supplement it later.',
    );
  });

  it('by a sooner clock that is only possible says so', () => {
    const report = aReport({ dueAtIfRequired: '2026-06-15T11:20:00-05:00' });
    expect(propose(report, 49)?.text).toBe(
      'By what is still open, the limit passed on Mon 15 June 11:20: report now.',
    );
  });

  it('to wait may be signed at that time, and the wait ends before the clock', () => {
    const hours = fc.integer({ min: 1, max: 500 });
    fc.assert(
      fc.property(hours, hours, fc.integer({ min: 1, max: 72 }), (clock, now, leadHours) => {
        const rules = { ...USUAL_RULES, leadHours };
        const report = undetermined(instant(hoursAfter(clock)));
        const proposal = propose(report, now, { rules });
        if (proposal?.kind !== 'wait') {
          expect(now).toBeGreaterThanOrEqual(clock - leadHours);
          return;
        }
        const signing = { kind: 'wait', until: proposal.until ?? '', questions: ['?'] } as const;
        const asked = { report, signing, filed: false, calls: [], changedAt: '', today: '2026-06-14', rules };
        expect(judgeSigning({ ...asked, now: hoursAfter(now) })).toEqual([]);
        expect(Date.parse(signing.until)).toBe(hoursAfter(clock - leadHours));
      }),
    );
  });
});
