import type { IncidentHead } from '../../../shared/record/incident-record.js';
import type { JsonObject } from '../../../shared/record/json-value.js';

/** The section in which the service keeps what it says of an incident itself. */
export const HEAD_SECTION = 'incident';

export function headOf(document: JsonObject): IncidentHead {
  return document as unknown as IncidentHead;
}
