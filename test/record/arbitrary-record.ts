import fc from 'fast-check';
import { isJsonObject, type JsonValue } from '../../shared/record/json-value.js';
import { SECTION_NAMES, type IncidentRecord } from '../../shared/record/incident-record.js';
import { sectionSchema } from '../../shared/wire/record-sections.js';

interface Schema {
  type?: string;
  enum?: string[];
  const?: string;
  examples?: string[];
  oneOf?: Schema[];
  format?: string;
  pattern?: string;
  items?: Schema;
  properties?: Record<string, Schema>;
  required?: string[];
  minItems?: number;
  maxItems?: number;
  minimum?: number;
  maximum?: number;
}

const WORDS = ['help', 'PWC 7', 'near the dock', 'Señora Díaz', 'nobody hurt', '580-555-0123', 'a', ''];
const instant = fc
  .integer({ min: Date.UTC(2020, 0, 1), max: Date.UTC(2030, 0, 1) })
  .map((ms) => new Date(ms).toISOString());

/** Values that a published schema of the record describes. */
export function arbitraryOf(schema: Schema): fc.Arbitrary<JsonValue> {
  if (schema.enum !== undefined) return fc.constantFrom(...schema.enum);
  if (schema.const !== undefined) return fc.constant(schema.const);
  if (schema.examples !== undefined) return fc.constantFrom(...schema.examples);
  if (schema.oneOf !== undefined) return fc.oneof(...schema.oneOf.map(arbitraryOf));
  switch (schema.type) {
    case 'boolean':
      return fc.boolean();
    case 'integer':
      return fc.nat({ max: 12 });
    case 'number':
      return fc
        .integer({ min: Math.max(schema.minimum ?? 0, -9000), max: Math.min(schema.maximum ?? 9000, 9000) })
        .map((whole) => (Math.abs(whole) < 10 ? whole : Math.max(whole / 4, schema.minimum ?? -9000)));
    case 'array':
      return arrayOf(schema);
    case 'object':
      return objectOf(schema);
    default:
      return textOf(schema);
  }
}

function textOf({ format, pattern }: Schema): fc.Arbitrary<string> {
  if (format === 'date-time') return instant;
  if (format === 'date') return instant.map((text) => text.slice(0, 10));
  return pattern === undefined ? fc.constantFrom(...WORDS) : fc.constantFrom('i1', 'i2', 'i3', 'A-4');
}

function arrayOf({ items = {}, minItems = 0, maxItems = 3 }: Schema): fc.Arbitrary<JsonValue> {
  const selector = (item: JsonValue): JsonValue => (isJsonObject(item) ? (item['id'] ?? null) : item);
  return fc.uniqueArray(arbitraryOf(items), {
    minLength: minItems,
    maxLength: Math.min(maxItems, 3),
    selector,
  });
}

function objectOf({ properties = {}, required = [] }: Schema): fc.Arbitrary<JsonValue> {
  const members = Object.entries(properties).map(([name, member]) => [name, arbitraryOf(member)] as const);
  return fc
    .record(Object.fromEntries(members), { requiredKeys: required })
    .map((object: Record<string, JsonValue>) => inOrder(inOrder(object, 'low', 'high'), 'at', 'until'));
}

/** A range and a span run forwards. */
function inOrder(object: Record<string, JsonValue>, first: string, last: string): Record<string, JsonValue> {
  const [low, high] = [object[first], object[last]];
  if (low === undefined || high === undefined || low === null || high === null || low <= high) return object;
  return { ...object, [first]: high, [last]: low };
}

/** Whole records of any content, sections missing at will. */
export const arbitraryRecord: fc.Arbitrary<IncidentRecord> = fc
  .record(Object.fromEntries(SECTION_NAMES.map((name) => [name, arbitraryOf(sectionSchema(name))])), {
    requiredKeys: [],
  })
  .chain((sections) =>
    instant.map((openedAt) => ({
      incident: { reference: '2026-0042', openedAt, status: 'open', timeZone: 'America/Chicago' },
      sections: sections,
    })),
  );
