import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { IncidentRecord } from '../../shared/record/incident-record.js';
import type { PersonRecord } from '../../shared/record/people-section.js';
import { comesOfAgeOn, endOfPeriod } from '../../shared/retention/end-of-period.js';
import { judgeRetention } from '../../shared/retention/judge-retention.js';
import { majorityStart } from '../../shared/retention/majority-start.js';
import { readRetentionFacts } from '../../shared/retention/read-retention-facts.js';
import { onDay, type RetentionFacts } from '../../shared/retention/retention-facts.js';
import type { RetentionPeriod } from '../../shared/retention/retention-form.js';

const told = <T>(value: T) => ({ value, known: 'told' as const });
const MAJORITY = { years: 18, later: { AL: 19, MS: 21 }, citation: 'x', basis: 'memory' as const };
const OCCURRED = { earliest: '2026-06-13', latest: '2026-06-13' };

describe('the last day of a period', () => {
  // Tex. Gov't Code 311.014(c) counts a month to the same number in a later month; where there is none, ours ends later.
  it.each([
    ['2026-06-13', 36, '2029-06-13'],
    ['2024-02-29', 12, '2025-03-01'],
    ['2024-02-29', 48, '2028-02-29'],
    ['2026-08-31', 6, '2027-03-01'],
    ['2026-12-31', 60, '2031-12-31'],
  ])('of %s and %i months is %s', (day, months, end) => expect(endOfPeriod(day, months)).toBe(end));

  it.each([
    ['2012-02-29', 18, '2030-03-01'],
    ['2008-02-29', 20, '2028-02-29'],
    ['2010-06-13', 18, '2028-06-13'],
  ])('somebody born on %s is %i on %s', (born, years, day) => expect(comesOfAgeOn(born, years)).toBe(day));
});

describe('a period that does not run against a minor', () => {
  const start = (people: PersonRecord[], more: object = {}) =>
    majorityStart({ people, unlisted: 'false', occurred: OCCURRED, states: ['TX'], ...more }, MAJORITY);
  const adult = { id: 'p1', birthDate: told('1990-01-01') };

  it('begins when the youngest comes of age, to the day', () => {
    const child = { id: 'p2', birthDate: told('2012-02-29') };
    expect(start([adult])).toMatchObject({ earliest: '2026-06-13', latest: '2026-06-13', missing: [] });
    expect(start([adult, child])).toMatchObject({ earliest: '2030-03-01', latest: '2030-03-01' });
    expect(start([adult, child], { states: ['TX', 'MS'] })).toMatchObject({
      earliest: '2030-03-01',
      latest: '2033-03-01',
    });
    expect(start([child], { states: null })).toMatchObject({ earliest: '2030-03-01', latest: '2033-03-01' });
  });

  it('with an age alone is that of somebody whose birthday was on the day, and asks for the birth date', () => {
    const fifteen = start([{ id: 'p1', name: 'Zed', age: told(15) }]);
    expect(fifteen).toMatchObject({ earliest: '2028-06-13', latest: '2029-06-13' });
    expect(fifteen.missing).toEqual(['The birth date of Zed, of whom only the age is known.']);
    expect(start([{ id: 'p1', age: told(40) }])).toMatchObject({ latest: '2026-06-13', missing: [] });
  });

  it('of somebody of unknown age may be that of a child born on the day; of a child not listed, of one unborn', () => {
    expect(start([{ id: 'p1' }])).toMatchObject({ earliest: '2026-06-13', latest: '2044-06-13' });
    expect(start([adult], { unlisted: 'unknown' })).toMatchObject({ latest: '2045-03-13' });
  });
});

const period = (more: Partial<RetentionPeriod>): RetentionPeriod => ({
  id: 'p',
  months: 36,
  from: 'occurrence',
  reason: 'Because.',
  citation: '46 U.S.C. 30106',
  basis: 'memory',
  ...more,
});
const facts = (more: Partial<RetentionFacts> = {}): RetentionFacts => ({
  starts: { occurrence: onDay('2026-06-13') },
  employeeHurt: 'false',
  states: ['TX'],
  chosenMonths: {},
  keptUntil: null,
  ...more,
});

describe('what has to be kept', () => {
  const three = period({});
  it('is kept through the last day of the longest period, and due the day after', () => {
    const five = period({ id: 'five', months: 60 });
    const at = (today: string) => judgeRetention([three, five], facts(), today);
    expect(at('2029-06-14').state).toBe('not-due');
    expect(at('2031-06-13').state).toBe('not-due');
    expect(at('2031-06-14')).toMatchObject({ state: 'due', latest: '2031-06-13', missing: [] });
    expect(at('2031-06-14').periods.map((one) => one.period.id)).toEqual(['five', 'p']);
  });

  it('is never due while something has not begun, or began nobody knows when, and says what is missing', () => {
    const closing = period({ id: 'c', from: 'closing', basis: 'choice', citation: null });
    const open = { known: 'not-begun' as const, missing: ['Still open.'] };
    const still = facts({ starts: { occurrence: onDay('2026-06-13'), closing: open } });
    expect(judgeRetention([three, closing], still, '2999-01-01')).toMatchObject({
      state: 'not-due',
      latest: null,
      missing: ['Still open.'],
    });
    const lost = facts({ starts: { occurrence: { known: false, earliest: null, missing: ['When.'] } } });
    expect(judgeRetention([three], lost, '2999-01-01')).toMatchObject({
      state: 'cannot-tell',
      missing: ['When.'],
    });
    expect(judgeRetention([], facts(), '2999-01-01').state).toBe('cannot-tell');
  });

  it('counts what may apply, and asks for what would rule it out', () => {
    const employer = period({ id: 'e', months: 60, onlyIf: 'employee-hurt' });
    const elsewhere = period({ id: 's', months: 120, notIn: ['TX', 'OK'] });
    const state = (more: Partial<RetentionFacts>, one: RetentionPeriod) =>
      judgeRetention([three, one], facts(more), '2030-01-01').state;
    expect(state({ employeeHurt: 'false' }, employer)).toBe('due');
    expect(state({ employeeHurt: 'unknown' }, employer)).toBe('cannot-tell');
    expect(state({ employeeHurt: 'true' }, employer)).toBe('not-due');
    expect(state({ states: ['TX', 'OK'] }, elsewhere)).toBe('due');
    expect(state({ states: ['TX', 'AR'] }, elsewhere)).toBe('cannot-tell');
    expect(state({ states: null }, elsewhere)).toBe('cannot-tell');
    expect(state({ states: ['AR'] }, elsewhere)).toBe('not-due');
    expect(judgeRetention([employer], facts({ employeeHurt: 'unknown' }), '2030-01-01').missing[0]).toMatch(
      /employee/,
    );
  });

  it('can be kept longer by choice and by decision, and a choice never shortens what the form or a law has', () => {
    const choice = period({ basis: 'choice', citation: null });
    const last = (one: RetentionPeriod, more: Partial<RetentionFacts>) =>
      judgeRetention([one], facts(more), '2026-07-01').latest;
    expect(last(choice, { chosenMonths: { p: 48 } })).toBe('2030-06-13');
    expect(last(choice, { chosenMonths: { p: 1 } })).toBe('2029-06-13');
    expect(last(three, { chosenMonths: { p: 48 } })).toBe('2029-06-13');
    expect(last(three, { keptUntil: '2040-01-01' })).toBe('2040-01-01');
    expect(last(three, { keptUntil: '2020-01-01' })).toBe('2029-06-13');
  });
});

const PERIODS = [
  period({ id: 'a' }),
  period({ id: 'b', from: 'majority', months: 24 }),
  period({ id: 'c', from: 'year-end', months: 60, onlyIf: 'employee-hurt' }),
  period({ id: 'd', from: 'majority', months: 120, notIn: ['TX'] }),
];
const OUTCOMES = ['unhurt', 'injured', 'died'] as const;
const aPerson = fc.record(
  {
    birthDate: fc.integer({ min: 1950, max: 2025 }).map((year) => told(`${year}-02-28`)),
    age: fc.integer({ min: 0, max: 90 }).map(told),
    outcome: fc.constantFrom(...OUTCOMES).map(told),
    employee: fc.constantFrom('yes' as const, 'no' as const).map(told),
  },
  { requiredKeys: [] },
);
const aDay = fc.integer({ min: 2026, max: 2070 }).map((year) => `${year}-09-01`);

function recordOf(people: readonly object[], complete: boolean): IncidentRecord {
  return {
    incident: {
      reference: '2026-0001',
      openedAt: '2026-06-13T18:00:00Z',
      status: 'closed',
      timeZone: 'America/Chicago',
    },
    sections: {
      'time-and-place': { states: told(['TX']) },
      people: {
        ...(complete && { assessment: told('complete' as const) }),
        people: people.map((person, place) => ({ id: `p${place}`, ...person })),
      },
    },
  };
}
const judgeRecord = (
  people: readonly object[],
  complete: boolean,
  today: string,
  keptUntil: string | null = null,
) => {
  const dates = {
    statusSince: '2026-07-01T00:00:00Z',
    lastPacketAt: null,
    lastDraftAt: null,
    timeZone: 'America/Chicago',
  };
  const read = readRetentionFacts(recordOf(people, complete), dates, MAJORITY);
  return judgeRetention(PERIODS, { ...read, chosenMonths: {}, keptUntil }, today);
};

describe('for whatever is known of people', () => {
  it('another person, a younger one, or a decision to keep never makes anything due earlier', () => {
    fc.assert(
      fc.property(
        fc.array(aPerson, { maxLength: 3 }),
        aPerson,
        fc.boolean(),
        aDay,
        aDay,
        (people, one, all, today, day) => {
          const before = judgeRecord(people, all, today).state;
          if (before === 'due') return;
          expect(judgeRecord([...people, one], all, today).state).not.toBe('due');
          expect(
            judgeRecord([...people, { ...one, birthDate: told('2025-02-28') }], all, today).state,
          ).not.toBe('due');
          expect(judgeRecord(people, all, today, day).state).not.toBe('due');
        },
      ),
      { numRuns: 300 },
    );
  });

  it('is due only if it is due for every answer to what is not known', () => {
    const born = Array.from({ length: 20 }, (_, n) => told(`${1950 + 4 * n}-02-28`));
    fc.assert(
      fc.property(fc.array(aPerson, { maxLength: 2 }), aDay, (people, today) => {
        const { state } = judgeRecord(people, true, today);
        if (state === 'cannot-tell') return;
        for (const birthDate of born)
          for (const employee of [told('yes'), told('no')])
            for (const outcome of OUTCOMES.slice(0, 2).map(told)) {
              const whole = people.map(({ age, ...known }) =>
                // An age that was said bounds the birth date, so that only those without one are completed.
                age === undefined
                  ? { birthDate, employee, outcome, ...known }
                  : { employee, outcome, age, ...known },
              );
              if (state === 'due') expect(judgeRecord(whole, true, today).state).toBe('due');
              else expect(judgeRecord(whole, true, today).state).not.toBe('due');
            }
      }),
      { numRuns: 150 },
    );
  });
});
