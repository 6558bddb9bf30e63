import { addFields } from '../../../shared/record/add-fields.js';
import type { RecordSections } from '../../../shared/record/incident-record.js';
import type { JsonObject } from '../../../shared/record/json-value.js';
import type { QueuedItem } from '../device/outbox-item.js';

const OF_SECTION = /\/sections\/([a-z-]+)(\/additions)?$/;

/**
 * The sections with what waits on this device, in the order in which it was written: whoever stands beside an officer
 * shows what was just said to the phone. What the service will not take is left out here too.
 */
export function withWaiting(
  sections: Partial<RecordSections>,
  waiting: readonly QueuedItem[],
): Partial<RecordSections> {
  const documents = new Map(Object.entries(sections) as [string, JsonObject][]);
  for (const item of waiting) {
    const [, name, adds] = (item.kind === 'request' && OF_SECTION.exec(item.path)) || [];
    if (item.kind !== 'request' || name === undefined || item.state === 'refused') continue;
    const next = adds === undefined ? replaced(item.body) : added(documents.get(name) ?? {}, item.body);
    if (next !== undefined) documents.set(name, next);
  }
  return Object.fromEntries(documents);
}

const replaced = (body: unknown): JsonObject | undefined =>
  (body as { document?: JsonObject } | undefined)?.document;

function added(before: JsonObject, body: unknown): JsonObject | undefined {
  const sum = addFields(before, (body ?? {}) as JsonObject);
  return sum.ok ? sum.document : undefined;
}
