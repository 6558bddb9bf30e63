import type { IncidentRecord } from '../../shared/record/incident-record.js';
import { membersOf, type Shape } from '../../shared/wire/record-members.js';
import { listRecordFields } from '../../shared/wire/list-record-fields.js';
import { SECTION_SHAPES } from '../../shared/wire/record-sections.js';

const PLACES = new Map(listRecordFields().map((field, place) => [field, place]));

/** Stands in a field, and in no other: whoever finds it in what left knows which field it came from. */
export const markOf = (field: string): string =>
  field.endsWith('/birthDate') ? '1971-02-03' : `Mark ${PLACES.get(field)} q`;

/**
 * A record that says something in every field there is. Every list has one item, called `i1`; whoever has an age is 40,
 * so that only the profile decides about a name.
 */
export function fullRecord(): IncidentRecord {
  const sections = Object.fromEntries(
    Object.entries(SECTION_SHAPES).map(([section, shape]) => [section, fill(shape, `${section}:`)]),
  );
  return {
    incident: {
      reference: '2026-0042',
      openedAt: '2026-06-13T16:30:00Z',
      status: 'open',
      timeZone: 'America/Chicago',
    },
    sections,
  } as unknown as IncidentRecord;
}

/** Times that are reckoned with, and so must be some. */
const TIMES: Readonly<Record<string, unknown>> = {
  'call:/taken': { at: '2026-06-13T16:30:00Z', how: 'pressed' },
  'call:/late/toldThenAt': { value: '2026-06-13T16:30:00Z', known: 'told' },
  'time-and-place:/occurred': { value: { at: '2026-06-13T16:20:00Z', precision: 'exact' }, known: 'told' },
};
export const isReckonedWith = (field: string): boolean => Object.hasOwn(TIMES, field);

function fill(shape: Shape, under: string): object {
  return Object.fromEntries(
    [...membersOf(shape)]
      .filter(([name]) => name !== 'minor')
      .map(([name, member]) => {
        const path = `${under}/${name}`;
        if (member.kind === 'part') return [name, fill(member.shape(), path)];
        if (member.kind === 'items') return [name, [fill(member.shape(), `${path}/*`)]];
        if (name === 'id') return [name, 'i1'];
        if (isReckonedWith(path)) return [name, TIMES[path]];
        const value = name === 'age' ? 40 : markOf(path);
        return [name, member.kind === 'known' ? { value, known: 'told', by: 'a bystander' } : value];
      }),
  );
}
