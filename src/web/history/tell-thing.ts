import { isJsonObject, type JsonValue } from '../../../shared/record/json-value.js';
import { type RecordedPlace, tellRecorded } from '../look/tell-recorded.js';
import type { PastSectionAnswer } from './history-answers.js';
import { nameOf } from './tell-path.js';

/** Fields that name a thing of another list by its id, and where that list stands. */
const LISTS: Readonly<Record<string, readonly [section: string, list: string]>> = {
  craft: ['craft', 'craft'],
  person: ['people', 'people'],
  renterPerson: ['people', 'people'],
  patients: ['people', 'people'],
  briefed: ['people', 'people'],
  officer: ['authorities', 'officers'],
};

/**
 * A value as a reader says it; a thing that is named by its id is told by its name, as far as it has one.
 * @example tellThing('c1', { section: 'people', path: '/people/p1/craft' }, sections) // 'PWC 7'
 */
export function tellThing(
  value: JsonValue,
  place: RecordedPlace,
  sections: readonly PastSectionAnswer[],
): string {
  const [section, list] = LISTS[place.path.slice(place.path.lastIndexOf('/') + 1)] ?? [];
  const document = sections.find((one) => one.section === section)?.document ?? {};
  const things = list === undefined ? undefined : document[list];
  if (!Array.isArray(things)) return tellRecorded(value, place);
  const named = (id: JsonValue): string | undefined =>
    nameOf((things as readonly JsonValue[]).find((thing) => isJsonObject(thing) && thing['id'] === id));
  const ids: readonly JsonValue[] = Array.isArray(value) ? value : [value];
  return ids.map((id) => named(id) ?? tellRecorded(id, place)).join('; ');
}
