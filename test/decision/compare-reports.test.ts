import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareReports } from '../../shared/decision/compare-reports.js';
import { earliestClock } from '../../shared/decision/decision.js';
import type { OwedReport } from '../../shared/decision/owed-report.js';
import { readIncidentFacts } from '../../shared/wire/read-incident-facts.js';
import { arbitraryFacts } from '../determination/arbitrary-facts.js';
import { quietGrounding } from '../determination/situation.js';
import { aReport, hoursAfter, instant, nothingDue, reportsOf, undetermined, vesselOf } from './reports.js';

const words = (before: OwedReport, after: OwedReport) =>
  compareReports([before], [after]).flatMap(({ changes }) =>
    changes.map(({ what, text }) => `${what}: ${text}`),
  );

const SOONER = '2026-06-15T11:20:00-05:00';

describe('what changed', () => {
  it.each<[string, OwedReport, OwedReport, string[]]>([
    ['nothing', aReport(), aReport(), []],
    [
      'the outcome, with its deadline',
      nothingDue(),
      aReport(),
      [
        'outcome: It was “Not required” and is now “Required”.',
        'deadline: It was without a deadline, and is now due by 2026-06-23 11:20.',
      ],
    ],
    [
      'the outcome of an open one, at the same clock',
      undetermined(SOONER),
      aReport({ dueAt: SOONER }),
      [
        'outcome: It was “Cannot tell yet” and is now “Required”.',
        'deadline: It was due by 2026-06-15 11:20, as far as it can be told, and is now due by 2026-06-15 11:20.',
      ],
    ],
    [
      'the deadline',
      aReport(),
      aReport({ dueAt: SOONER }),
      ['deadline: It was due by 2026-06-23 11:20, and is now due by 2026-06-15 11:20.'],
    ],
    [
      'the deadline that an open question could bring',
      aReport(),
      aReport({ dueAtIfRequired: SOONER }),
      [
        'deadline: It was due by 2026-06-23 11:20, and is now due by 2026-06-23 11:20, and perhaps already 2026-06-15 11:20.',
      ],
    ],
    ['a sooner clock ruled out', aReport({ dueAtIfRequired: SOONER }), aReport(), []],
    [
      'the possible clock of an open one',
      undetermined(SOONER),
      undetermined('2026-06-23T11:20:00-05:00'),
      [
        'deadline: It was due by 2026-06-15 11:20, as far as it can be told, and is now due by 2026-06-23 11:20, as far as it can be told.',
      ],
    ],
    ['the offset of the same moment', aReport(), aReport({ dueAt: '2026-06-23T16:20:00Z' }), []],
    [
      'it must be done at once',
      aReport({ dueAt: SOONER }),
      aReport({ dueAt: SOONER, immediate: true }),
      ['deadline: It was due by 2026-06-15 11:20, and is now due without delay from 2026-06-15 11:20.'],
    ],
    [
      'the reporter',
      aReport(),
      aReport({}, { who: 'owner' }),
      [
        'reporter: It was to be made by the operator, or the owner if the operator cannot, and is now to be made by the owner.',
      ],
    ],
    [
      'the authority',
      aReport(),
      aReport({ authority: 'Marine Patrol' }),
      ['authority: It went to: The reporting authority. It now goes to: Marine Patrol.'],
    ],
    [
      'the law',
      aReport(),
      { ...aReport(), law: { version: 'b'.repeat(64), readOn: '2027-01-10' } },
      [
        'law: The law at hand changed (federal rule): it was the rule pack read on 2026-11-25 and is now the rule pack read on 2027-01-10. Read in the law itself.',
      ],
    ],
    [
      'the law, on the day on which it was read',
      aReport(),
      { ...aReport(), law: { version: 'b'.repeat(64), readOn: '2026-11-25' } },
      [
        'law: The law at hand changed (federal rule): it was the rule pack read on 2026-11-25 and is now a corrected one of that day. Read in the law itself.',
      ],
    ],
    [
      'reasons, questions and citations',
      aReport(),
      aReport({
        reasons: [{ trigger: 'death', value: 'false', text: 'Nobody died.' }],
        questions: [{ fact: '/people/0/care', text: 'What care?' }],
        citations: ['33 CFR 173.55(a)(1)'],
        dueBasis: 'in other words',
      }),
      [],
    ],
    ['the words about the reporter', aReport(), aReport({}, { text: 'For A, a rental.' }), []],
  ])('%s', (_name, before, after, expected) => {
    expect(words(before, after)).toEqual(expected);
  });

  it('is a report that came or went', () => {
    const [one, other] = [aReport(), aReport({ id: 'us-tx/accident-report', jurisdiction: 'us-tx' })];
    expect(compareReports([one], [other])).toMatchObject([
      { key: { duty: 'us-tx/accident-report' }, changes: [{ what: 'appeared' }] },
      { key: { duty: 'us/accident-report' }, changes: [{ what: 'gone' }] },
    ]);
  });

  it('is not that the only craft got a name, but that it is one of two', () => {
    const unnamed = aReport({}, { vessel: null });
    const [a, b] = [aReport({}, { vessel: 'A' }), aReport({}, { vessel: 'B' })];
    expect(compareReports([unnamed], [a])).toEqual([]);
    expect(
      compareReports([unnamed], [a, b]).map(({ key, changes }) => [key.vessel, changes[0]?.what]),
    ).toEqual([
      ['A', 'appeared'],
      ['B', 'appeared'],
      [null, 'gone'],
    ]);
  });
});

describe('from facts to what changed', () => {
  const before = quietGrounding();
  const federal = (after: typeof before) =>
    compareReports(reportsOf(before), reportsOf(after))
      .filter(({ key }) => key.duty === 'us/accident-report')
      .flatMap(({ changes }) => changes.map(({ what }) => what));

  it.each<[string, typeof before, string[]]>([
    [
      'stitches',
      {
        ...before,
        people: [{ id: 'p1', role: 'operator', vessel: 'A', outcome: 'injured', care: 'beyond-first-aid' }],
      },
      ['outcome', 'deadline'],
    ],
    [
      // 33 CFR 173.55(a)(3): damage to vessels and other property that totals $2,000 or more.
      'an estimate at the amount',
      { ...before, damage: [{ id: 'd1', of: 'vessel', vessel: 'A', amount: 2000 }] },
      ['outcome', 'deadline'],
    ],
    [
      'an estimate a cent below it',
      { ...before, damage: [{ id: 'd1', of: 'vessel', vessel: 'A', amount: 1999.99 }] },
      [],
    ],
    // 33 CFR 173.55(c): the owner, where the operator cannot.
    ['an operator who cannot report', { ...before, operatorAbleToReport: 'no' }, ['reporter']],
    ['another casualty type', { ...before, casualtyTypes: ['collision-with-fixed-object'] }, []],
    ['a second craft of ours', { ...before, vessels: [vesselOf('A'), vesselOf('B')] }, ['appeared']],
  ])('%s', (_name, after, expected) => {
    expect(federal(after)).toEqual(expected);
  });

  it('no moved clock and no other outcome goes unsaid, and nothing is said of what stayed', () => {
    fc.assert(
      fc.property(arbitraryFacts(['TX']), arbitraryFacts(['TX']), (one, other) => {
        fc.pre([one, other].every((facts) => readIncidentFacts(structuredClone(facts)).ok));
        const [was, now] = [reportsOf(one), reportsOf(other)];
        expect(compareReports(was, was)).toEqual([]);
        const said = compareReports(was, now);
        for (const report of now) {
          const before = was.filter(({ duty }) => duty.id === report.duty.id);
          // One that named no craft is carried on to the only craft there is.
          const alone = now.filter(({ duty }) => duty.id === report.duty.id).length === 1;
          const same =
            before.find(({ reporter }) => reporter.vessel === report.reporter.vessel) ??
            before.find(({ reporter }) => alone && reporter.vessel === null);
          const sooner =
            (earliestClock(report.duty) ?? Infinity) < (earliestClock(same?.duty ?? report.duty) ?? Infinity);
          const differs = same?.duty.outcome !== report.duty.outcome || same.duty.dueAt !== report.duty.dueAt;
          if (!sooner && !differs) continue;
          expect(said.map(({ key }) => `${key.duty} ${key.vessel}`)).toContain(
            `${report.duty.id} ${report.reporter.vessel}`,
          );
        }
      }),
      { numRuns: 60 },
    );
  });

  it('a clock that moves to and fro is said both ways', () => {
    const hour = fc.integer({ min: 0, max: 500 });
    fc.assert(
      fc.property(hour, hour, (one, other) => {
        const [a, b] = [one, other].map((at) => aReport({ dueAt: instant(hoursAfter(at)) })) as [
          OwedReport,
          OwedReport,
        ];
        expect(compareReports([a], [b]).length).toBe(one === other ? 0 : 1);
        expect(compareReports([b], [a]).length).toBe(one === other ? 0 : 1);
      }),
    );
  });
});
