import { describe, expect, it } from 'vitest';
import type { Vessel } from '../../shared/record/incident-facts.js';
import { determineFacts, dutyOf, quietGrounding } from './situation.js';

/** 33 CFR 173.59: the state of number (or of principal use), or that of the occurrence if it is another. */
const filed = (vessel: Partial<Vessel>, states: string[]) => {
  const facts = quietGrounding();
  const numbered = { ...facts.vessels[0], ...vessel } as Vessel;
  return dutyOf(
    determineFacts({ ...facts, vessels: [numbered], place: { states, timeZone: 'America/Chicago' } }),
    'us/accident-report',
  ).filedWith?.map(({ text }) => text);
};
const WITH = 'Accident report, federal rule, filed with';

describe('where the federal report goes', () => {
  it.each<[string, Partial<Vessel>, string[], string[]]>([
    ['in the state of number', {}, ['TX'], [`${WITH} Texas`]],
    ['outside the state of number', {}, ['OK'], [`${WITH} Texas`, `${WITH} Oklahoma`]],
    ['on a line', {}, ['TX', 'OK'], [`${WITH} Texas`, `${WITH} Oklahoma`]],
  ])('%s', (_, vessel, states, expected) => {
    expect(filed(vessel, states)).toEqual(expected);
  });

  it('names the state of principal use of a vessel without a number', () => {
    const facts = quietGrounding();
    const vessels: Vessel[] = [{ id: 'K', use: 'rental', ours: true, numbered: 'no' }];
    const { filedWith } = dutyOf(determineFacts({ ...facts, vessels, people: [] }), 'us/accident-report');
    expect(filedWith?.map(({ state }) => state)).toEqual([null, 'TX']);
    expect(filedWith?.[0]?.text).toContain('mainly used');
  });

  // As the packs of these states record what was read; the citations stand in them.
  it.each([
    ['KY', 'no', 'yes'],
    ['DE', 'yes', 'unknown'],
    ['TX', 'unknown', 'unknown'],
  ])(
    '%s: says what an officer’s report is worth and whether it is confidential',
    (state, officer, secret) => {
      const facts = { ...quietGrounding(), place: { states: [state], timeZone: 'America/Chicago' } };
      expect(dutyOf(determineFacts(facts), `us-${state.toLowerCase()}/accident-report`)).toMatchObject({
        officerReportExcuses: officer,
        reportConfidential: secret,
      });
    },
  );
});
