import type { Reading } from '../kernel/reading.js';
import type { RecordSections, SectionName } from '../record/incident-record.js';
import { findRecordFaults } from './record-faults.js';
import type { Shape } from './record-members.js';
import { findRefusals } from './record-refusals.js';
import { SECTION_SHAPES } from './record-sections.js';
import { sortFaults } from './sort-faults.js';

/**
 * Reads parsed JSON by a class of the record: unknown members, wrong values, and card or Social Security numbers
 * anywhere are faults, each at its pointer, all of them together. The value is the input itself.
 * @example readRecordInput(CallDto, { said: 'help', weather: 'fine' })
 * // { ok: false, errors: [{ pointer: '/weather', detail: 'No such member: take it out.' }] }
 */
export function readRecordInput<T extends object>(shape: new () => T, input: unknown): Reading<T> {
  return readAt(shape, input, []) as Reading<T>;
}

/** Reads one section of the record; `at` is where it stands in the request. */
export function readSection<N extends SectionName>(
  name: N,
  input: unknown,
  at: readonly string[] = [],
): Reading<RecordSections[N]> {
  return readAt(SECTION_SHAPES[name], input, at) as Reading<RecordSections[N]>;
}

function readAt(shape: Shape, input: unknown, at: readonly string[]): Reading<unknown> {
  // A number that must not be kept is named first and alone: other faults may repeat names that hold it.
  const refusals = findRefusals(input, at);
  const errors = sortFaults(refusals.length > 0 ? refusals : findRecordFaults(shape, input, at));
  return errors.length > 0 ? { ok: false, errors } : { ok: true, value: input };
}
