import type { JsonObject, JsonValue } from '../../../shared/record/json-value.js';
import { valueAt, withValue } from './edit-document.js';

/** A craft as the fleet lists it, as far as anything is known of it. */
export interface FleetCraft {
  readonly id: string;
  readonly unitName?: string;
  readonly type?: string;
  readonly hullNumber?: string;
  readonly registrationNumber?: string;
}

/**
 * A section on craft in which a craft of the fleet was chosen: what the fleet knows of it is filled in where nothing
 * stands, as read off the list of the fleet.
 * @param at path of the craft, such as `/craft/c1`
 */
export function fillFromFleet(document: JsonObject, at: string, craft: FleetCraft): JsonObject {
  const fact = (value: string | undefined): JsonValue | undefined =>
    value === undefined ? undefined : { value, known: 'read-off', by: 'the list of the fleet' };
  const known: Readonly<Record<string, JsonValue | undefined>> = {
    ours: true,
    name: craft.unitName,
    type: fact(craft.type),
    hullNumber: fact(craft.hullNumber),
    registrationNumber: fact(craft.registrationNumber),
  };
  let filled = document;
  for (const [name, value] of Object.entries(known)) {
    const path = `${at}/${name}`;
    if (value !== undefined && valueAt(filled, path) === undefined) filled = withValue(filled, path, value);
  }
  return filled;
}
