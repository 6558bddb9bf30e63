import { describe, expect, it } from 'vitest';
import { findReport, keyOf, listGoneReports, listOwedReports } from '../../shared/decision/owed-report.js';
import { determineFacts, nothingKnown, quietGrounding } from '../determination/situation.js';
import { aReport, LAW, reportsOf, vesselOf } from './reports.js';

const federal = (vessels: ReturnType<typeof vesselOf>[]) =>
  reportsOf({ ...quietGrounding(), vessels, people: [] })
    .map(keyOf)
    .filter(({ duty }) => duty === 'us/accident-report');

describe('the reports that are ours to decide about', () => {
  // 33 CFR 173.55(a): "The operator of a vessel shall submit" the report; each craft has an operator.
  it.each<[string, Parameters<typeof federal>[0], (string | null)[]]>([
    ['one for each of two of our craft', [vesselOf('A'), vesselOf('B')], ['A', 'B']],
    ['none for a craft of others', [vesselOf('A'), vesselOf('B', { ours: false })], ['A']],
    [
      'none for a craft that nobody calls ours, beside one that is',
      [vesselOf('A'), { id: 'B', use: 'recreational' }],
      ['A'],
    ],
    ['one for a craft of which nobody said whose it is', [{ id: 'B', use: 'recreational' }], ['B']],
    ['none where every craft is of others', [vesselOf('B', { ours: false })], []],
    ['one without a craft while none is named', [], [null]],
  ])('%s', (_name, vessels, expected) => {
    expect(federal(vessels).map(({ vessel }) => vessel)).toEqual(expected);
  });

  it('carry the law that was used for each jurisdiction', () => {
    const facts = quietGrounding();
    const reports = listOwedReports(determineFacts(facts), facts, (jurisdiction) =>
      jurisdiction === 'us-tx' ? LAW : null,
    );
    expect(reports.map(({ duty, law }) => [duty.jurisdiction, law !== null])).toContainEqual(['us-tx', true]);
    expect(reports.map(({ duty, law }) => [duty.jurisdiction, law !== null])).toContainEqual(['us', false]);
  });

  it('of a call of which nothing is known are undetermined, and of no state', () => {
    const reports = reportsOf(nothingKnown());
    expect(reports.map(({ duty }) => duty.outcome)).toEqual(reports.map(() => 'undetermined'));
    expect(reports.map(({ duty }) => duty.id)).toContain('state/accident-report');
  });
});

describe('a report named before its craft was known', () => {
  const unnamed = { duty: 'us/accident-report', vessel: null };
  const [a, b] = [aReport({}, { vessel: 'A' }), aReport({}, { vessel: 'B' })];

  it('is that of the only craft', () => {
    expect(findReport([a], unnamed)).toBe(a);
  });

  it('is neither of two', () => {
    expect(findReport([a, b], unnamed)).toBeNull();
  });

  it('never stands for another craft or duty', () => {
    expect(findReport([a], { duty: 'us/accident-report', vessel: 'B' })).toBeNull();
    expect(findReport([a], { duty: 'us-tx/accident-report', vessel: null })).toBeNull();
  });
});

it('a report that was filed and is not called for any more is kept, once, with nothing due', () => {
  const key = { duty: 'us-ok/accident-report', vessel: 'A' };
  const gone = listGoneReports([aReport()], [key, key, { duty: 'us/accident-report', vessel: 'A' }]);
  expect(gone).toMatchObject([{ duty: { id: key.duty, outcome: 'not-required', dueAt: null }, gone: true }]);
});
