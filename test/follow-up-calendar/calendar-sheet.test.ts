import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { writeCalendar } from '../../src/server/follow-up/calendar-sheet.js';
import type { TaskRow } from '../../src/server/follow-up/database/task.row.js';
import { FollowUpForms } from '../../src/server/follow-up/follow-up-forms.js';

const FORMS = FollowUpForms.read();

const TASK: TaskRow = {
  id: '3f6c2f1e-5b1d-4c59-9d0e-2f4f6a1c7b10',
  incidentId: 'i-1',
  taskKey: 'headcount',
  round: 1,
  template: 'headcount',
  taskOrder: 1,
  title: 'Count heads against the rental agreement',
  why: 'Maria Lopez is missing.',
  source: 'common practice, no source',
  owner: 'shift-lead',
  assigneeId: null,
  state: 'open',
  dueAt: '2026-06-13T16:20:00.000Z',
  dueOrder: '2026-06-13T16:20:00.000Z',
  dueWhy: 'Her leg is broken.',
  evidenceAsked: 'Who was found.',
  escalates: true,
  restsOn: [],
  duty: null,
  acknowledgedAt: null,
  acknowledgedBy: null,
  version: 1,
  createdAt: '2026-06-13T16:00:00.000Z',
  updatedAt: '2026-06-13T16:05:00.000Z',
};

/** What another author's parser (RFC 5545) finds in the calendar. */
function read(...tasks: Partial<TaskRow>[]) {
  const text = writeCalendar(
    tasks.map((task) => ({ task: { ...TASK, ...task }, reference: '2026-0042' })),
    FORMS.tasks,
  );
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  const events = calendar.getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component);
    return {
      uid: event.uid,
      sequence: event.sequence,
      summary: event.summary,
      start: event.startDate.toJSDate().toISOString(),
      zone: event.startDate.zone.tzid,
      status: String(component.getFirstPropertyValue('status')),
      stamp: String(component.getFirstPropertyValue('dtstamp')),
    };
  });
  return { text, calendar, events };
}

describe('the calendar of tasks', () => {
  it('holds reference, task and time of each, as another author reads it', () => {
    const { calendar, events } = read({});
    expect(String(calendar.getFirstPropertyValue('version'))).toBe('2.0');
    expect(String(calendar.getFirstPropertyValue('prodid'))).toBe('-//Incident desk//Tasks//EN');
    expect(events).toEqual([
      {
        uid: TASK.id,
        sequence: 0,
        summary: '2026-0042: Count heads against the rental agreement',
        start: '2026-06-13T16:20:00.000Z',
        zone: 'UTC',
        status: 'CONFIRMED',
        stamp: '2026-06-13T16:05:00Z',
      },
    ]);
  });

  it('keeps the UID and counts on when a task changes, and cancels what was superseded', () => {
    const moved = read({ version: 4, dueAt: '2026-06-14T16:20:00.000Z' }).events[0];
    expect(moved).toMatchObject({ uid: TASK.id, sequence: 3, start: '2026-06-14T16:20:00.000Z' });
    const superseded = read({ version: 5, state: 'superseded' }).events[0];
    expect(superseded).toMatchObject({ uid: TASK.id, sequence: 4, status: 'CANCELLED' });
    const done = read({ version: 5, state: 'done' }).events[0];
    expect(done).toMatchObject({
      status: 'CONFIRMED',
      summary: expect.stringMatching(/^Done: 2026-0042/) as string,
    });
  });

  it('says nothing of what happened, to whom, and with what', () => {
    const { text, events } = read(
      {},
      { id: 'b', template: null, title: 'Ask Maria Lopez about her broken leg' },
      { id: 'c', template: 'keep-craft', title: 'Keep the ski that broke her leg as it is' },
    );
    expect(text).not.toMatch(/maria|lopez|leg|broke|missing/i);
    expect(events[1]?.summary).toBe('2026-0042: a task that somebody added');
  });

  it('names no craft as a record has it', () => {
    const named = FORMS.tasks.filter(({ title }) => title.includes('{craft}'));
    expect(named.length).toBeGreaterThan(0);
    const { events } = read(
      ...named.map(({ id }) => ({ id, template: id, title: 'the ski of Maria Lopez' })),
    );
    expect(events.map(({ summary }) => summary)).toEqual(
      named.map(({ title }) => `2026-0042: ${title.replaceAll('{craft}', 'our craft')}`),
    );
  });

  it('leaves out what has no time, and is a calendar when it is empty', () => {
    expect(read({ dueAt: null }).events).toEqual([]);
    expect(read().events).toEqual([]);
  });

  it('is written in lines as RFC 5545, 3.1, has them, whatever is in a title', () => {
    const title = `Give the notice; to A, B\nand C \\ ${'é'.repeat(80)}`;
    const { text, events } = read({ title });
    expect(events[0]?.summary).toBe(`2026-0042: ${title}`);
    expect(text.endsWith('\r\nEND:VCALENDAR\r\n')).toBe(true);
    const lines = text.split('\r\n');
    expect(lines.filter((line) => Buffer.byteLength(line) > 75)).toEqual([]);
    expect(text.replaceAll('\r\n', '')).not.toContain('\n');
  });
});
