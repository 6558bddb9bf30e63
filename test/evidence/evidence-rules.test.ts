import { describe, expect, it } from 'vitest';
import { listEvidenceCustodyGaps } from '../../shared/record/evidence-custody-gaps.js';
import { sameMediaType } from '../../shared/record/evidence-kind.js';
import { listOutsideEvidenceGaps } from '../../shared/record/evidence-outside-gaps.js';
import { listEvidenceQuestions } from '../../shared/record/evidence-questions.js';
import { evidenceIsRestricted } from '../../shared/record/evidence-restriction.js';
import type {
  Captured,
  EvidenceFile,
  EvidenceWords,
  HandOver,
  OutsideEvidence,
} from '../../shared/record/evidence-section.js';
import type { PersonOutcome } from '../../shared/record/incident-facts.js';
import type { IncidentRecord, RecordSections } from '../../shared/record/incident-record.js';
import type { Occurred } from '../../shared/record/time-and-place.js';

const PHOTO: EvidenceFile = {
  id: 'f1',
  version: 1,
  kind: 'photo',
  type: 'image/jpeg',
  size: 1,
  sha256: '0'.repeat(64),
  receivedAt: '2026-06-13T21:00:00.000Z',
  receivedFrom: 'Ana',
  about: {},
};

const recordWith = (sections: Partial<RecordSections>): IncidentRecord => ({
  incident: {
    reference: '2026-0001',
    openedAt: '2026-06-13T20:30:00.000Z',
    status: 'open',
    timeZone: 'America/Chicago',
  },
  sections,
});

const happened = (occurred: Occurred) =>
  recordWith({ 'time-and-place': { occurred: { value: occurred, known: 'saw' } } });
/** 15:10 in Chicago, where 13 June is in daylight saving time. */
const AT_1510 = happened({ at: '2026-06-13T15:10:00-05:00', precision: 'to-the-minute' });

const askedOf = (captured: Captured, record: IncidentRecord) =>
  listEvidenceQuestions({ ...PHOTO, captured }, record);

describe('the time of a photograph beside the record', () => {
  it('is a question with both times', () => {
    expect(askedOf({ local: '2026-06-13T14:02:00' }, AT_1510)).toEqual([
      {
        code: 'taken-before',
        text:
          'The file says that it was taken at 14:02, the record that it happened at 15:10: ' +
          'which clock is off, or was it taken before?',
      },
    ]);
  });

  it.each<[string, Captured, IncidentRecord, string[]]>([
    ['within the give of clocks', { local: '2026-06-13T15:05:00' }, AT_1510, []],
    ['a second beyond it', { local: '2026-06-13T15:04:59' }, AT_1510, ['taken-before']],
    ['after it, as pictures of damage are', { local: '2026-06-13T15:50:00' }, AT_1510, []],
    [
      'by a clock in another zone that says so',
      { local: '2026-06-13T20:12:00', offset: '+00:00' },
      AT_1510,
      [],
    ],
    [
      'by a clock in another zone',
      { local: '2026-06-13T14:02:00', offset: '-05:00' },
      AT_1510,
      ['taken-before'],
    ],
    ['later than it arrived', { local: '2026-06-13T16:30:00' }, AT_1510, ['taken-after-arrival']],
    ['no time at all', {}, AT_1510, []],
    ['when nobody said when it happened', { local: '2026-06-13T11:00:00' }, recordWith({}), []],
    [
      'about when it happened, as widely as that was said',
      { local: '2026-06-13T14:41:00' },
      happened({ at: '2026-06-13T15:10:00-05:00', precision: 'about', withinMinutes: 30 }),
      [],
    ],
  ])('%s', (_case, captured, record, codes) => {
    expect(askedOf(captured, record).map(({ code }) => code)).toEqual(codes);
  });

  it('names the days where they differ', () => {
    expect(askedOf({ local: '2025-06-13T14:02:00' }, AT_1510)[0]?.text).toContain(
      '14:02 on 2025-06-13, the record that it happened at 15:10 on 2026-06-13',
    );
  });
});

describe('the place of a photograph beside the record', () => {
  const at = (latitude: number, longitude: number, accuracyM?: number) =>
    recordWith({
      'time-and-place': {
        position: {
          value: { latitude, longitude, ...(accuracyM === undefined ? {} : { accuracyM }) },
          known: 'read-off',
        },
      },
    });
  const here: Captured = { latitude: 33.83, longitude: -96.57 };

  // A degree of latitude is 110.9 km at 34° N (WGS 84), so 0.009 degrees are 998 m and 0.0095 are 1054 m.
  it.each<[string, IncidentRecord, boolean]>([
    ['the same', at(33.83, -96.57), false],
    ['998 m off', at(33.839, -96.57), false],
    ['1054 m off', at(33.8395, -96.57), true],
    ['1054 m off a place known to 100 m', at(33.8395, -96.57, 100), false],
    ['in another state', at(34.5, -98.1), true],
    ['when nobody said where', recordWith({}), false],
  ])('%s', (_case, record, asks) => {
    expect(askedOf(here, record).some(({ code }) => code === 'taken-elsewhere')).toBe(asks);
  });

  it('is near on both sides of the date line', () => {
    expect(askedOf({ latitude: 52, longitude: -179.9999 }, at(52, 179.9999))).toEqual([]);
  });
});

it.each([
  [undefined, 'image/jpeg', true],
  ['', 'image/jpeg', true],
  ['application/octet-stream', 'image/jpeg', true],
  ['image/jpg', 'image/jpeg', true],
  ['IMAGE/JPEG; q=1', 'image/jpeg', true],
  ['text/csv', 'text/plain', true],
  ['image/png', 'image/jpeg', false],
  ['constructor', 'image/jpeg', false],
])('a device that says %s contradicts %s: %s is the same', (declared, type, same) => {
  expect(sameMediaType(declared, type)).toBe(same);
  const { length } = listEvidenceQuestions({ ...PHOTO, type, declaredType: declared ?? '' }, recordWith({}));
  expect(length).toBe(same ? 0 : 1);
});

describe('who sees a file', () => {
  const people = (outcome?: PersonOutcome) => ({
    people: [
      { id: 'p1', ...(outcome === undefined ? {} : { outcome: { value: outcome, known: 'saw' as const } }) },
      { id: 'p2', outcome: { value: 'unhurt' as const, known: 'saw' as const } },
    ],
  });

  it.each<[string, EvidenceFile['kind'], EvidenceWords, PersonOutcome | undefined, boolean]>([
    ['a picture where nobody died', 'photo', {}, 'injured', false],
    ['a picture of nobody knows whom, after a death', 'photo', {}, 'died', true],
    ['a video of nobody knows whom, after a death', 'video', {}, 'died', true],
    ['the voice of nobody knows whom, after a death', 'audio', {}, 'died', true],
    ['a paper, after a death', 'document', {}, 'died', false],
    ['a picture of somebody who died', 'photo', { people: ['p2', 'p1'] }, 'died', true],
    ['a picture of somebody else', 'photo', { people: ['p2'] }, 'died', false],
    ['a picture of nobody', 'photo', { people: [] }, 'died', false],
    ['the original of a statement', 'document', { statement: 's1' }, undefined, true],
    ['what somebody restricted', 'photo', { restricted: true }, undefined, true],
    ['what somebody opened', 'photo', { restricted: false, people: ['p1'] }, 'died', false],
  ])('%s', (_case, kind, about, outcome, restricted) => {
    expect(evidenceIsRestricted({ kind, about }, people(outcome))).toBe(restricted);
  });

  it('an incident without anybody in it', () => {
    expect(evidenceIsRestricted(PHOTO, {})).toBe(false);
  });
});

describe('the log of a thing', () => {
  const whole = {
    id: 'i1',
    version: 1,
    what: 'Lanyard',
    foundWhere: 'Platform',
    foundAt: '2026-06-13T20:40:00Z',
    foundBy: 'Ana Ruiz',
    keptWhere: 'Safe',
    seal: '0417',
    photographs: ['f1'],
  };
  const passed = (from: string, to: string, at: string): HandOver => ({
    id: at,
    from,
    to,
    at,
    why: 'Asked for',
  });

  it.each<[string, HandOver[], string[]]>([
    [
      'without a hole',
      [passed('ana ruiz ', 'Pike', '2026-06-13T23:00:00Z'), passed('Pike', 'Lab', '2026-06-14T09:00:00Z')],
      [],
    ],
    [
      'from somebody who did not have it',
      [passed('Ana Ruiz', 'Pike', '2026-06-13T23:00:00Z'), passed('Cole', 'Lab', '2026-06-14T09:00:00Z')],
      ['Nobody says how it came from Pike to Cole.'],
    ],
    [
      'before it was found',
      [passed('Ana Ruiz', 'Pike', '2026-06-13T20:39:59Z')],
      ['Ana Ruiz handed it to Pike before the entry above says that Ana Ruiz had it: which time is off?'],
    ],
  ])('%s', (_case, handOvers, gaps) => {
    expect(listEvidenceCustodyGaps({ ...whole, handOvers })).toEqual(gaps);
  });

  it('asks for everything that nobody said', () => {
    expect(listEvidenceCustodyGaps({ id: 'i1', version: 1, what: 'Lanyard' })).toHaveLength(6);
  });
});

describe('what others hold', () => {
  const now = Date.parse('2026-06-14T12:00:00Z');
  const camera: OutsideEvidence = {
    id: 'o1',
    version: 1,
    kind: 'dock-camera',
    state: 'asked',
    holder: 'Marina',
    askedAt: '2026-06-13T22:00:00Z',
    overwrittenAt: '2026-06-20T00:00:00Z',
  };

  it.each<[string, Partial<OutsideEvidence>, string[]]>([
    ['asked for in time', {}, []],
    ['not asked for', { state: 'not-asked' }, ['Nobody has asked']],
    ['perhaps overwritten', { overwrittenAt: '2026-06-14T12:00:00Z' }, ['It may be overwritten']],
    ['received after that', { state: 'received', overwrittenAt: '2026-06-14T12:00:00Z' }, []],
    [
      'a posted video that only somebody mentioned',
      { kind: 'posted-video' },
      ['Keep the address', 'Keep the account', 'Keep who saw it'],
    ],
  ])('%s', (_case, different, beginnings) => {
    const gaps = listOutsideEvidenceGaps({ ...camera, ...different }, now);
    expect(gaps).toEqual(beginnings.map((words) => expect.stringContaining(words) as string));
  });

  it('of which nothing is known but that it is there', () => {
    const gaps = listOutsideEvidenceGaps({ id: 'o1', version: 1, kind: 'other', state: 'promised' }, now);
    expect(gaps).toHaveLength(3);
  });
});
