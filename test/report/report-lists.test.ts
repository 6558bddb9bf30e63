import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { IncidentRecord } from '../../shared/record/incident-record.js';
import { ITEM_STATES, worstOf } from '../../shared/report/filled-report.js';
import { fillReport } from '../../shared/report/fill-report.js';
import { listLacks } from '../../shared/report/list-lacks.js';
import { listReports } from '../../shared/report/list-reports.js';
import { arbitraryRecord } from '../record/arbitrary-record.js';
import { FLEET, FORM, matterOf, RICH } from './report-matters.js';

describe('the reports of an incident', () => {
  it.each<[string, IncidentRecord['sections'], string[]]>([
    ['no craft named', {}, ['_.owner', '_.operator']],
    ['two of ours', RICH.sections, ['c1.owner', 'c1.operator', 'c2.owner', 'c2.operator']],
    [
      'one of ours and a stranger’s',
      { craft: { craft: [{ id: 'a', ours: true }, { id: 'b', ours: false }, { id: 'c' }] } },
      ['a.owner', 'a.operator'],
    ],
    [
      'none known to be ours',
      { craft: { craft: [{ id: 'b', ours: false }, { id: 'c' }] } },
      ['c.owner', 'c.operator'],
    ],
  ])('are one for each vessel and reporter: %s', (_, sections, ids) => {
    expect(listReports({ sections }).map(({ id }) => id)).toEqual(ids);
  });
});

describe('whatever the record', () => {
  it('has every item in exactly one state', () => {
    fc.assert(
      fc.property(arbitraryRecord, (record) => {
        for (const head of listReports(record)) {
          const report = fillReport(FORM, matterOf(record, head.id));
          const all = [...report.items, ...report.stateItems];
          expect(report.items).toHaveLength(26);
          const { answered, unknown, missing } = report.counts;
          expect(answered + unknown + missing).toBe(all.length);
          for (const { state, lines } of all) {
            expect(ITEM_STATES).toContain(state);
            expect(lines.length).toBeGreaterThan(0);
            expect(state).toBe(worstOf(lines.map((line) => line.state)));
            expect(lines.every(({ text }) => text.trim() !== '' && !text.includes('[object'))).toBe(true);
          }
        }
      }),
      { numRuns: 150 },
    );
  });
});

describe('what the reports still lack, by section', () => {
  const reports = listReports(RICH).map(({ id }) => fillReport(FORM, matterOf(RICH, id, { fleet: FLEET })));
  const lacks = listLacks(reports);

  it('stands at the section where it is written, once for all reports that lack it', () => {
    const conditions = lacks.find(({ section }) => section === 'conditions')?.lacks ?? [];
    expect(conditions.map(({ item, label, path, state }) => [item, label, path, state])).toEqual([
      ['7', 'Water', '/waterTemperature', 'missing'],
      ['13', 'Used', '/forecastUsed', 'unknown'],
    ]);
    expect(conditions[0]?.reports).toEqual(['c1.owner', 'c1.operator', 'c2.owner', 'c2.operator']);
  });

  it('names the field of the craft that lacks it', () => {
    const craft = lacks.find(({ section }) => section === 'craft')?.lacks ?? [];
    expect(craft.find(({ item }) => item === '25')).toMatchObject({
      subject: 'PWC 9',
      path: '/craft/c2/hullNumber',
      reports: ['c2.owner', 'c2.operator'],
    });
  });

  it('tells nothing that was answered', () => {
    const answered = reports[0]?.items.filter(({ state }) => state === 'answered').map(({ id }) => id) ?? [];
    const told = lacks.flatMap((one) => one.lacks).filter(({ reports: ids }) => ids.includes('c1.owner'));
    expect(told.filter(({ item }) => answered.includes(item))).toEqual([]);
  });
});
