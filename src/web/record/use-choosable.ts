import type { SectionName } from '../../../shared/record/incident-record.js';
import type { JsonObject } from '../../../shared/record/json-value.js';
import { useAskAll } from '../ask/use-ask-all.js';
import type { RefTarget } from './control-of.js';
import { itemsAt } from './edit-document.js';
import type { FleetCraft } from './fill-from-fleet.js';
import { nameItem } from './name-item.js';
import { documentOf, type RecordAnswer } from './record-answers.js';
import { sectionLabelOf } from './section-label.js';
import type { Choosable } from './section-editor.js';

type Choices = Readonly<Record<RefTarget, readonly Choosable[]>>;
const NONE: Choices = { craft: [], people: [], officers: [], lines: [], fleet: [], places: [] };

/** What fields of a section may name: items of this record, and what the business lists. */
export function useChoosable(
  section: SectionName,
  document: JsonObject,
  record: RecordAnswer | undefined,
  reads: boolean,
): { choices: Choices; fleet: readonly FleetCraft[] } {
  const fleet = useAskAll<FleetCraft>(reads && section === 'craft' ? '/api/craft' : null, {
    keep: true,
  });
  const places = useAskAll<{ id: string; name?: string }>(
    reads && section === 'time-and-place' ? '/api/places' : null,
    { keep: true },
  );
  // What is being written counts at once: a person who was just added can be chosen.
  const of = (name: SectionName): JsonObject => (name === section ? document : documentOf(record, name));
  const listed = (name: SectionName, path: string): Choosable[] =>
    itemsAt(of(name), path).map((item, place) => ({
      id: item.id,
      name: nameItem(item, sectionLabelOf(name, path, place + 1), NONE),
    }));
  const choices: Choices = {
    craft: listed('craft', '/craft'),
    people: listed('people', '/people'),
    officers: listed('authorities', '/officers'),
    lines: listed('damage', '/lines'),
    fleet: (fleet.data ?? []).map(({ id, unitName = id }) => ({ id, name: unitName })),
    places: (places.data ?? []).map(({ id, name = id }) => ({ id, name })),
  };
  return { choices, fleet: fleet.data ?? [] };
}
