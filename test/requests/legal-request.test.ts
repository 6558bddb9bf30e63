import { describe, expect, it } from 'vitest';
import type { LegalRequest, RequestDetails, RequestStatus } from '../../shared/record/legal-request.js';
import {
  holdsToBegin,
  isOpen,
  ofIncident,
  REQUEST_KINDS,
  standing,
  wantsDays,
} from '../../shared/record/legal-request.js';
import { adviseOnRequest } from '../../shared/record/legal-request-advice.js';
import { dueOf, firstClock, objectionsBy } from '../../shared/record/legal-request-clocks.js';

const ZONE = 'America/Chicago';
const BY = { person: 'Max', account: null, role: 'manager', device: null };
const AT = '2026-06-22T15:00:00Z';

const details = (more: Partial<RequestDetails> = {}): RequestDetails => ({
  kind: 'subpoena',
  from: 'N. Amparo',
  receivedAt: '2026-06-22T10:00:00-05:00',
  way: 'served-in-person',
  receivedBy: 'Ann',
  due: 'unknown',
  ...more,
});

const request = (more: Partial<RequestDetails> = {}, rest: Partial<LegalRequest> = {}): LegalRequest => ({
  id: 'r1',
  number: 'R-2026-0001',
  loggedAt: AT,
  by: BY,
  details: details(more),
  incidents: [{ incident: 'i1', since: AT, by: BY }],
  steps: [],
  productions: [],
  objections: [],
  ...rest,
});

const iso = (ms: number | null): string | null => (ms === null ? null : new Date(ms).toISOString());

describe('when a request is due', () => {
  it.each<[string, Partial<RequestDetails>, string | null]>([
    ['never made up', { due: 'unknown' }, null],
    [
      'at the instant that is stated',
      { due: 'at', dueAt: '2026-07-10T09:00:00-05:00' },
      '2026-07-10T14:00:00.000Z',
    ],
    // Fed. R. Civ. P. 6(a)(4): the last day ends at midnight in the zone of the court.
    ['to the last minute of a day', { due: 'day', dueDay: '2026-07-10' }, '2026-07-11T04:59:00.000Z'],
    [
      'in the zone of the paper',
      { due: 'day', dueDay: '2026-07-10', timeZone: 'America/Los_Angeles' },
      '2026-07-11T06:59:00.000Z',
    ],
    [
      'east of Greenwich',
      { due: 'day', dueDay: '2026-07-10', timeZone: 'Pacific/Guam' },
      '2026-07-10T13:59:00.000Z',
    ],
    ['on the day on which clocks go back', { due: 'day', dueDay: '2026-11-01' }, '2026-11-02T05:59:00.000Z'],
  ])('%s', (_, more, expected) => {
    expect(iso(dueOf(details(more), ZONE))).toBe(expected);
  });
});

describe('objections to a federal subpoena', () => {
  // Fed. R. Civ. P. 45(d)(2)(B): "before the earlier of the time specified for compliance or 14 days after the subpoena
  // is served"; 6(a)(1): the day of service is not counted, every other day and the last one are.
  it.each<[string, Partial<RequestDetails>, string | null]>([
    [
      '14 days after service, where compliance is later',
      { court: 'federal', due: 'day', dueDay: '2026-07-22' },
      '2026-07-07T04:59:00.000Z',
    ],
    [
      'the time for compliance, where that is earlier',
      { court: 'federal', due: 'at', dueAt: '2026-06-29T09:00:00-05:00' },
      '2026-06-29T14:00:00.000Z',
    ],
    ['14 days, where no time is known', { court: 'federal' }, '2026-07-07T04:59:00.000Z'],
    [
      'by the day in the zone, not in UTC',
      { court: 'federal', receivedAt: '2026-06-23T03:30:00Z' },
      '2026-07-07T04:59:00.000Z',
    ],
    ['no time of ours for a court of a state', { court: 'state' }, null],
    ['no time of ours where the court is not known', { court: 'not-known' }, null],
    ['none for a preservation letter', { court: 'federal', kind: 'preservation-letter' }, null],
  ])('%s', (_, more, expected) => {
    expect(iso(objectionsBy(details(more), ZONE))).toBe(expected);
  });
});

describe('the time that runs out first', () => {
  const due = { court: 'federal', due: 'day', dueDay: '2026-07-22' } as const;
  const objection = { id: 'o1', at: AT, recordedAt: AT, by: BY, to: 'N. Amparo', way: 'mail', what: 'No.' };
  it.each<[string, LegalRequest, string | null]>([
    ['is that to object', request(due), '2026-07-07T04:59:00.000Z'],
    [
      'is when it is due, once somebody objected',
      request(due, { objections: [objection] }),
      '2026-07-23T04:59:00.000Z',
    ],
    ['is not known while it is not known when it is due', request({ court: 'federal' }), null],
  ])('%s', (_, one, expected) => {
    expect(iso(firstClock(one, ZONE))).toBe(expected);
  });
});

it.each<[RequestStatus | null, boolean]>([
  [null, true],
  ['open', true],
  ['in-part', true],
  ['answered', false],
  ['refused', false],
  ['withdrawn', false],
])('stands as %s: open is %s', (status, expected) => {
  const step = { id: 's', at: AT, recordedAt: AT, by: BY, reason: 'So it is.' };
  expect(isOpen(request({}, { steps: status === null ? [] : [{ ...step, status }] }))).toBe(expected);
});

describe('a hold', () => {
  it('is begun by a subpoena, an order and a preservation letter, and by no other paper', () => {
    const begins = REQUEST_KINDS.filter((kind) => holdsToBegin(request({ kind })).length > 0);
    expect(begins).toEqual(['subpoena', 'court-order', 'preservation-letter']);
  });

  it.each([
    ['it began before', { hold: 'h1' }],
    ['a person decided against it', { notHeld: 'The paper is about another lake.' }],
    ['the incident was taken out', { ended: { at: AT, by: BY, reason: 'Another lake.' } }],
  ])('is not begun where %s', (_, link) => {
    const incidents = [{ incident: 'i1', since: AT, by: BY, ...link }];
    expect(holdsToBegin(request({}, { incidents }))).toEqual([]);
  });
});

it('stands in the record of an incident without the other incidents and what was produced of them', () => {
  const one = { incident: 'i1', since: AT, by: BY };
  const produced = {
    id: 'p1',
    at: AT,
    recordedAt: AT,
    by: BY,
    to: 'N. Amparo',
    way: 'by hand',
    what: 'A packet.',
  };
  const entry = ofIncident(
    request(
      {},
      {
        incidents: [one, { ...one, incident: 'i2' }],
        productions: [
          { ...produced, incident: 'i1' },
          { ...produced, id: 'p2', incident: 'i2' },
          { ...produced, id: 'p3' },
        ],
      },
    ),
    one,
  );
  expect(JSON.stringify(entry)).not.toContain('i2');
  expect(entry.productions.map(({ id }) => id)).toEqual(['p1', 'p3']);
});

it('counts what no later entry took the place of', () => {
  expect(standing([{ id: 'a' }, { id: 'b', replaces: 'a' }])).toEqual([{ id: 'b', replaces: 'a' }]);
});

describe('what belongs to no incident', () => {
  const may = { from: '2026-05-01', through: '2026-05-31' };
  const none = { incidents: [] };
  it.each<[string, LegalRequest, boolean]>([
    ['is wanted by a request that names nothing', request({}, none), true],
    ['is not wanted by one that names an incident and no days', request(), false],
    ['is wanted where the days meet', request({ periodFrom: '2026-05-31' }), true],
    [
      'is not wanted where they do not',
      request({ periodFrom: '2026-06-01', periodThrough: '2026-06-30' }, none),
      false,
    ],
    ['is not wanted where they end before', request({ periodThrough: '2026-04-30' }, none), false],
  ])('%s', (_, wanting, expected) => {
    expect(wantsDays(wanting, may)).toBe(expected);
  });
  it('is wanted by whoever names days, while nobody knows of which days it is', () => {
    expect(wantsDays(request({ periodFrom: '2026-06-01' }), null)).toBe(true);
  });
});

describe('what to mind', () => {
  const keysOf = (more: Partial<RequestDetails>, rest: Partial<LegalRequest> = {}): string[] =>
    adviseOnRequest(request(more, rest)).map(({ key }) => key);
  it.each<[string, string[], string[]]>([
    [
      'a paper that nobody read',
      keysOf({ kind: 'not-read' }, { incidents: [] }),
      ['read', 'counsel', 'silence', 'scope'],
    ],
    [
      'a federal subpoena with a day',
      keysOf({ court: 'federal', due: 'day', dueDay: '2026-07-10' }),
      ['counsel', 'silence', 'keep', 'objections', 'day', 'medical'],
    ],
    [
      'a subpoena of a state that counsel saw',
      keysOf({ court: 'state', counselSawAt: AT }),
      ['silence', 'keep', 'state', 'unknown', 'medical'],
    ],
    [
      'a preservation letter',
      keysOf({ kind: 'preservation-letter' }),
      ['counsel', 'silence', 'keep', 'unknown'],
    ],
    [
      'somebody asking for their own data',
      keysOf({ kind: 'access-request' }),
      ['unknown', 'identity', 'medical'],
    ],
  ])('%s', (_, keys, expected) => {
    expect(keys).toEqual(expected);
  });
  it('names where each comes from', () => {
    for (const { words, source } of adviseOnRequest(request({ court: 'federal' }))) {
      expect([words, source]).toEqual([
        words,
        expect.stringMatching(/^(Fed\. R\. Civ\. P\. |common practice)/),
      ]);
    }
  });
});
