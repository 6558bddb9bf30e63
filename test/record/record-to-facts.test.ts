import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Known } from '../../shared/call/known.js';
import { determine } from '../../shared/determination/determine.js';
import type { RulePack } from '../../shared/law/rule-pack.js';
import type { IncidentRecord, RecordSections } from '../../shared/record/incident-record.js';
import { listAssumptions } from '../../shared/record/list-assumptions.js';
import { recordToFacts } from '../../shared/record/record-to-facts.js';
import { readIncidentFacts } from '../../shared/wire/read-incident-facts.js';
import { sectionSchema } from '../../shared/wire/record-sections.js';
import { loadRulePacks } from '../../src/server/law/law.api.js';
import { loadGeography } from '../../src/server/place/place.api.js';
import { arbitraryOf, arbitraryRecord } from './arbitrary-record.js';

const OPENED = '2026-06-13T16:40:00.000Z';

const record = (sections: Partial<RecordSections>): IncidentRecord => ({
  incident: { reference: '2026-0042', openedAt: OPENED, status: 'open', timeZone: 'America/Chicago' },
  sections,
});
const saw = <T>(value: T): Known<T> => ({ value, known: 'saw' });

describe('any record', () => {
  it('gives facts that their reader accepts', () => {
    fc.assert(
      fc.property(arbitraryRecord, (any) => {
        expect(readIncidentFacts(recordToFacts(any))).toMatchObject({ ok: true });
      }),
      { numRuns: 300 },
    );
  });
});

describe('a fresh call', () => {
  let packs: RulePack[];
  beforeAll(async () => {
    packs = await loadRulePacks();
  });

  it('never determines to "not required", whatever was said and wherever', () => {
    const geography = loadGeography();
    const call = arbitraryOf(sectionSchema('call')) as fc.Arbitrary<RecordSections['call']>;
    const states = fc.constantFrom(
      ...packs.map(({ jurisdiction }) => jurisdiction).filter((code) => code !== 'US'),
    );
    fc.assert(
      fc.property(call, fc.option(states), (said, state) => {
        const sections = state === null ? {} : { 'time-and-place': { states: saw([state]) } };
        const facts = recordToFacts(record({ call: said, ...sections }));
        const { duties } = determine(facts, { packs, geography, source: 'test' });
        expect(duties.length).toBeGreaterThan(0);
        // A notice of accidents outside a state is settled by where it was, which is said.
        const open = duties.filter(
          ({ reasons }) =>
            !reasons.some((one) => one.trigger === 'applies/occurred-elsewhere' && one.value === 'false'),
        );
        expect(open.filter(({ outcome }) => outcome === 'not-required')).toEqual([]);
      }),
    );
  });

  it('has nothing in it but when it was taken, and says so', () => {
    const bare = record({ call: { said: 'help', craftNamed: ['PWC 7'] } });
    expect(recordToFacts(bare)).toEqual({
      schemaVersion: 1,
      occurredAt: OPENED,
      learnedAt: OPENED,
      place: { timeZone: 'America/Chicago' },
      casualtyTypes: [],
      vessels: [],
      peopleAssessment: 'not-yet',
      people: [],
      damageAssessment: 'not-yet',
      damage: [],
    });
    expect(listAssumptions(bare).map(({ pointer }) => pointer)).toEqual(['/occurredAt']);
  });
});

describe('when it happened', () => {
  it.each<
    [string, Partial<RecordSections>, { occurredAt: string; occurredUntil?: string; learnedAt?: string }]
  >([
    [
      'as said, to the minute',
      {
        'time-and-place': {
          occurred: saw({ at: '2026-06-13T11:20:00-05:00', precision: 'to-the-minute' }),
        },
      },
      { occurredAt: '2026-06-13T11:20:00-05:00' },
    ],
    [
      'about then: from the earliest it can have been',
      {
        'time-and-place': {
          occurred: saw({ at: '2026-06-13T16:20:00Z', precision: 'about', withinMinutes: 15 }),
        },
      },
      { occurredAt: '2026-06-13T16:05:00.000Z', occurredUntil: '2026-06-13T16:35:00.000Z' },
    ],
    [
      'a span',
      {
        'time-and-place': {
          occurred: saw({ at: '2026-06-13T15:00:00Z', until: '2026-06-13T16:00:00Z', precision: 'span' }),
        },
      },
      { occurredAt: '2026-06-13T15:00:00Z', occurredUntil: '2026-06-13T16:00:00Z' },
    ],
    [
      'damage found at check-in: from departure to return',
      {
        'check-in': { departedAt: saw('2026-06-13T14:00:00Z'), returnedAt: saw('2026-06-13T16:30:00Z') },
      },
      { occurredAt: '2026-06-13T14:00:00Z', occurredUntil: '2026-06-13T16:30:00.000Z' },
    ],
    [
      'nobody said: from the call, by a phone that was half a minute ahead',
      { call: { taken: { at: '2026-06-13T16:30:30Z', how: 'pressed', phoneOffsetS: 30 } } },
      { occurredAt: '2026-06-13T16:30:00.000Z', learnedAt: '2026-06-13T16:30:00.000Z' },
    ],
    [
      'a time entered later is taken as said',
      { call: { taken: { at: '2026-06-13T16:30:30Z', how: 'entered', phoneOffsetS: 30 } } },
      { occurredAt: '2026-06-13T16:30:30.000Z' },
    ],
  ])('%s', (_what, sections, expected) => {
    expect(recordToFacts(record(sections))).toMatchObject(expected);
  });
});

describe('a craft that is not back', () => {
  const out = { people: { people: [{ id: 'p1', outcome: saw('not-back' as const) }] } };
  const ended = (end: 'found-empty' | 'late') => ({ call: { overdue: { ended: saw(end) } } });

  it.each<[string, Partial<RecordSections>, string | undefined, string[]]>([
    ['nobody knows of harm', out, undefined, ['/occurredAt']],
    ['it came back late', { ...out, ...ended('late') }, undefined, ['/occurredAt']],
    // 33 CFR 173.53(a): circumstances that indicate death or injury.
    [
      'it was found empty',
      { ...out, ...ended('found-empty') },
      'yes',
      ['/occurredAt', '/people/0/signsOfHarm'],
    ],
    [
      'it was found empty, and they were seen ashore',
      {
        people: { people: [{ id: 'p1', outcome: saw('not-back'), signsOfHarm: saw('no') }] },
        ...ended('found-empty'),
      },
      'no',
      ['/occurredAt'],
    ],
  ])('%s', (_what, sections, signs, assumed) => {
    expect(recordToFacts(record(sections)).people[0]?.signsOfHarm).toBe(signs);
    expect(listAssumptions(record(sections)).map(({ pointer }) => pointer)).toEqual(assumed);
  });

  it('is missed since somebody was last seen', () => {
    const death = { lastSeenAt: saw('2026-06-13T16:05:00Z') };
    const people = [{ id: 'p1', outcome: saw('missing' as const), death }];
    expect(recordToFacts(record({ people: { people } })).people[0]?.missingSince).toBe(
      '2026-06-13T16:05:00Z',
    );
  });
});

describe('a headcount', () => {
  it.each<[number | undefined, number | undefined, string | undefined, string | undefined]>([
    [4, 3, undefined, 'no'],
    [4, 4, undefined, undefined],
    [4, undefined, undefined, undefined],
    [4, 3, 'yes', 'yes'],
  ])('%j expected, %j found, said %j: accounted for %j', (expected, found, said, accounted) => {
    const sections = {
      'emergency-response': {
        ...(expected === undefined ? {} : { headcountExpected: saw(expected) }),
        ...(found === undefined ? {} : { headcountFound: saw(found) }),
      },
      ...(said === undefined ? {} : { people: { everyoneAccountedFor: saw('yes' as const) } }),
    };
    expect(recordToFacts(record(sections)).everyoneAccountedFor).toBe(accounted);
  });
});

describe('a late telling', () => {
  it.each([
    ['to one of ours at the time: known since', '2026-06-13T15:00:00Z', '2026-06-13T15:00:00.000Z'],
    ['before it happened: a slip', '2026-06-12T15:00:00Z', OPENED],
  ])('%s', (_what, toldThenAt, learnedAt) => {
    const sections = {
      call: { kind: 'late' as const, late: { toldThenAt: saw(toldThenAt) } },
      'time-and-place': { occurred: saw({ at: '2026-06-13T14:30:00Z', precision: 'about' as const }) },
    };
    expect(recordToFacts(record(sections)).learnedAt).toBe(learnedAt);
  });
});

describe('what does not fit together', () => {
  it('an hour of death before the occurrence is unknown, and said so', () => {
    const slip = record({
      'time-and-place': { occurred: saw({ at: '2026-06-13T16:20:00Z', precision: 'to-the-minute' }) },
      people: { people: [{ id: 'p1', outcome: saw('died'), diedAt: saw('2026-06-12T16:20:00Z') }] },
    });
    expect(recordToFacts(slip).people).toEqual([{ id: 'p1', outcome: 'died' }]);
    expect(listAssumptions(slip).map(({ pointer }) => pointer)).toEqual(['/people/0/diedAt']);
  });

  it('a craft that nobody listed is no craft', () => {
    const facts = recordToFacts(
      record({
        people: { people: [{ id: 'p1', craft: 'c9' }] },
        damage: { lines: [{ id: 'd1', craft: 'c9' }] },
      }),
    );
    expect([facts.people, facts.damage]).toEqual([
      [{ id: 'p1', outcome: 'unknown' }],
      [{ id: 'd1', of: 'other-property', amount: 'unknown' }],
    ]);
  });

  it('a craft of unknown use is taken for one that is covered, and said so', () => {
    const unsaid = record({ craft: { craft: [{ id: 'c1', ours: true }, { id: 'c2' }] } });
    expect(recordToFacts(unsaid).vessels).toEqual([
      { id: 'c1', use: 'rental', ours: true },
      { id: 'c2', use: 'recreational' },
    ]);
    expect(listAssumptions(unsaid).map(({ pointer }) => pointer)).toEqual([
      '/occurredAt',
      '/vessels/0/use',
      '/vessels/1/use',
    ]);
  });
});

describe('damage', () => {
  type Line = NonNullable<RecordSections['damage']['lines']>[number];
  const assessed = (lines: Line[], findings: { id: string; damageLine?: string; shown?: 'yes' }[]) =>
    record({
      damage: { assessment: saw('complete'), lines },
      'check-in': {
        findings: findings.map(({ shown, ...rest }) => ({
          ...rest,
          ...(shown === undefined ? {} : { shownAtCheckOut: saw(shown) }),
        })),
      },
    });

  it.each([
    ['each finding has its line', [{ id: 'f1', damageLine: 'd1' }], 'complete'],
    ['one has none', [{ id: 'f1', damageLine: 'd1' }, { id: 'f2' }], 'partial'],
    ['one names a line that is not there', [{ id: 'f1', damageLine: 'd9' }], 'partial'],
    ['one was there before', [{ id: 'f1', shown: 'yes' as const }], 'complete'],
  ])('found at check-in, %s', (_what, findings, assessment) => {
    const found = assessed([{ id: 'd1', amount: saw(5) }], findings);
    expect(recordToFacts(found).damageAssessment).toBe(assessment);
    expect(listAssumptions(found).map(({ pointer }) => pointer)).toEqual(
      assessment === 'partial' ? ['/occurredAt', '/damageAssessment'] : ['/occurredAt'],
    );
  });

  it('that the check-out sheet showed stays listed and comes to nothing, and is said so', () => {
    const old = record({
      damage: { lines: [{ id: 'd1', amount: saw(900), newSinceCheckOut: saw('no') }] },
    });
    expect(recordToFacts(old).damage).toEqual([{ id: 'd1', of: 'other-property', amount: 0 }]);
    expect(listAssumptions(old).map(({ pointer }) => pointer)).toContain('/damage/0/amount');
  });
  // Labour on infrastructure: open, after the guidance that counts its material cost (CG-BSX Policy Letter 23-01 CH-1).
  it.each<[string, Partial<Line>, unknown]>([
    ['in one figure', { amount: saw(1999.99) }, 1999.99],
    ['material and labour added to the cent', { material: saw(0.07), labour: saw(1999.93) }, 2000],
    ['bounds added', { material: saw({ low: 100, high: 200 }), labour: saw(50) }, { low: 150, high: 250 }],
    ['one part known: at least that', { material: saw(2300) }, { low: 2300, high: 1_000_000_000 }],
    [
      'labour not known: at least the material',
      { material: saw(5), labour: saw('unknown') },
      { low: 5, high: 1e9 },
    ],
    ['nothing known', {}, 'unknown'],
    [
      'labour on infrastructure may count or not',
      { of: saw('boating-infrastructure'), material: saw(1500), labour: saw(900) },
      { low: 1500, high: 2400 },
    ],
    ['both at the most', { material: saw(1e9), labour: saw(1e9) }, 1e9],
  ])('%s', (_what, line, amount) => {
    const facts = recordToFacts(record({ damage: { lines: [{ id: 'd1', ...line }] } }));
    expect(facts.damage[0]?.amount).toEqual(amount);
    expect(readIncidentFacts(facts)).toMatchObject({ ok: true });
  });
});
