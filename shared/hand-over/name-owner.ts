import type { IncidentRecord, SectionName } from '../record/incident-record.js';
import { isJsonObject, type JsonValue } from '../record/json-value.js';

/** Sections of which everything that names nobody else belongs to the renter. */
const OF_THE_RENTER: readonly SectionName[] = ['rental', 'check-in'];

/**
 * The id of the person whose own a field is: the person it stands under, or whom its item names; of rental and
 * check-in the renter. Undefined where it is nobody's.
 * @example nameOwner(record, 'statements', '/statements/s1/words') // 'p1', who gave it
 */
export function nameOwner(record: IncidentRecord, section: SectionName, path: string): string | undefined {
  const tokens = path.split('/').slice(1);
  if (section === 'people') return tokens[0] === 'people' ? tokens[1] : undefined;
  let here: JsonValue | undefined = record.sections[section] as unknown as JsonValue;
  let owner: string | undefined;
  let insideItem = false;
  for (const token of tokens) {
    if (Array.isArray(here)) {
      const items: readonly JsonValue[] = here;
      here = items.find((item) => isJsonObject(item) && item['id'] === token);
      insideItem = true;
      const person = isJsonObject(here) ? here['person'] : undefined;
      owner = typeof person === 'string' ? person : owner;
    } else {
      here = isJsonObject(here) ? here[token] : undefined;
    }
  }
  if (owner !== undefined || insideItem) return owner;
  return OF_THE_RENTER.includes(section) ? record.sections.rental?.renterPerson : undefined;
}
