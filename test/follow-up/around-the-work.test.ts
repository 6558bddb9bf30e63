import { describe, expect, it } from 'vitest';
import { mayWriteTo } from '../../shared/follow-up/may-write-to.js';
import { type ShiftTask, refuseSignature, summarizeShift } from '../../shared/follow-up/summarize-shift.js';
import { warnOnClosing } from '../../shared/follow-up/warn-on-closing.js';
import type { Contact } from '../../shared/record/account-sections.js';
import { DEAD, onTheWater, recordOf, saw, UNHURT } from './situations.js';

describe('what may be written to renter and family', () => {
  const withContact = (contact: Partial<Contact>) =>
    onTheWater([UNHURT], { contacts: { contacts: [{ id: 'k1', ...contact }] } });

  it('is nothing after a death, and nothing by itself while one is not ruled out', () => {
    expect(mayWriteTo(onTheWater([DEAD]), 'family')).toMatchObject({ automatic: false, notice: false });
    expect(mayWriteTo(onTheWater([DEAD]), 'renter')).toMatchObject({ automatic: false, notice: false });
    expect(mayWriteTo(recordOf({}), 'family')).toMatchObject({ automatic: false, notice: false });
  });

  it.each<[string, Partial<Contact>, boolean]>([
    ['a lawyer speaks for the renter', { party: 'renter', lawyerSpeaks: saw('yes') }, false],
    ['nobody is sure whether one does', { party: 'renter', lawyerSpeaks: saw('unknown') }, false],
    ['a lawyer has written, for whom nobody knows', { party: 'lawyer' }, false],
    ['somebody unnamed has a lawyer', { lawyerSpeaks: saw('yes') }, false],
    ['the renter said that no lawyer speaks', { party: 'renter', lawyerSpeaks: saw('no') }, true],
    ['the lawyer is that of the other party', { party: 'other-party', lawyerSpeaks: saw('yes') }, true],
  ])('goes by itself or not when %s', (_, contact, automatic) => {
    expect(mayWriteTo(withContact(contact), 'renter').automatic).toBe(automatic);
  });
});

describe('what one shift hands to the next', () => {
  const NOW = Date.parse('2026-07-04T20:00:00Z');
  const task = (taskId: string, dueAt: string | null, isPromise = false): ShiftTask => ({
    taskId,
    reference: '2026-0042',
    title: taskId,
    dueAt,
    isPromise,
  });

  it('is the open calls, the craft held, the promises, and what is due before the shift after', () => {
    const summary = summarizeShift(
      {
        calls: [
          { incidentId: 'i2', reference: '2026-0043', openedAt: '2026-07-04T18:00:00Z' },
          { incidentId: 'i1', reference: '2026-0042', openedAt: '2026-07-04T12:00:00Z' },
        ],
        craft: [
          { craftId: 'c10', name: 'PWC 10', why: [] },
          { craftId: 'c7', name: 'PWC 7', why: ['Named in 2026-0042.'] },
        ],
        notBack: [
          { notBackId: 'n2', unit: 'Kayak 3', since: '2026-07-04T19:30:00Z', ended: null },
          { notBackId: 'n1', unit: 'PWC 4', since: '2026-07-04T13:00:00-05:00', ended: null },
        ],
        tasks: [
          task('later', '2026-07-05T08:00:01Z'),
          task('in 12 hours', '2026-07-05T08:00:00Z'),
          task('overdue', '2026-07-03T08:00:00Z'),
          task('no time known', null),
          task('call back next week', '2026-07-11T08:00:00Z', true),
        ],
      },
      NOW,
    );
    expect(summary.asOf).toBe('2026-07-04T20:00:00.000Z');
    expect(summary.openCalls.map(({ reference }) => reference)).toEqual(['2026-0042', '2026-0043']);
    expect(summary.craftHeld.map(({ name }) => name)).toEqual(['PWC 7', 'PWC 10']);
    expect(summary.notBack?.map(({ unit }) => unit)).toEqual(['PWC 4', 'Kayak 3']);
    expect(summary.callBacks.map(({ taskId }) => taskId)).toEqual(['call back next week']);
    expect(summary.dueNext.map(({ taskId }) => taskId)).toEqual(['overdue', 'no time known', 'in 12 hours']);
  });

  it.each([
    ['outgoing', { outgoing: null, incoming: null }, 'a', null],
    ['outgoing', { outgoing: 'a', incoming: null }, 'b', 'This side has signed.'],
    ['incoming', { outgoing: null, incoming: null }, 'b', 'The outgoing shift signs first.'],
    ['incoming', { outgoing: 'a', incoming: null }, 'a', 'Two different people sign.'],
    ['incoming', { outgoing: 'a', incoming: null }, 'b', null],
    ['incoming', { outgoing: 'a', incoming: 'b' }, 'c', 'This side has signed.'],
  ] as const)('is signed by %s after %j by %s: %s', (side, signed, who, refusal) => {
    expect(refuseSignature(signed, side, who)).toBe(refusal);
  });
});

describe('what speaks against closing', () => {
  it('is every duty that is not settled, open task, craft and running clock', () => {
    const warnings = warnOnClosing({
      duties: [
        { id: 'us/accident-report', outcome: 'required' },
        { id: 'us-tx/accident-report', outcome: 'required' },
        { id: 'us-ok/accident-report', outcome: 'undetermined' },
        { id: 'us-ok/notice', outcome: 'not-required' },
      ],
      settled: new Set(['us-tx/accident-report']),
      openTasks: [{ title: 'Tell the insurer' }],
      clocks: [
        { name: 'Suit', citation: '46 U.S.C. 30106', endsAt: '2029-06-13T11:20:00-05:00' },
        { name: 'Action', citation: '46 U.S.C. 30529', endsAt: null },
      ],
      craftHeld: ['PWC 7'],
    });
    expect(warnings.map(({ kind }) => kind)).toEqual([
      'duty-required',
      'duty-open',
      'task-open',
      'craft-held',
      'claims-clock-runs',
    ]);
    expect(warnings[0]?.text).toContain('Accident report, federal rule');
    expect(warnings.at(-1)?.text).toContain('until 2029-06-13');
  });
});
