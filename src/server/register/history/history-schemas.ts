type Schema = Record<string, unknown>;

const text: Schema = { type: 'string' };
const day: Schema = { type: 'string', format: 'date' };
const count: Schema = { type: 'integer', minimum: 0 };
const dollars: Schema = { type: 'number', description: 'US dollars' };
const object = (properties: Record<string, Schema>): Schema => ({
  type: 'object',
  required: Object.keys(properties),
  properties,
});
const listOf = (items: Schema): Schema => ({ type: 'array', items });

const SUM = object({
  low: dollars,
  high: dollars,
  unknown: { ...count, description: 'Lines without a figure' },
});
const PAID: Schema = { anyOf: [SUM, { type: 'null' }] };
const PEOPLE = object({ hurt: count, died: count, missing: count, unhurt: count, unknown: count });
const GROUP = object({
  name: text,
  incidents: count,
  people: PEOPLE,
  unlisted: count,
  damage: SUM,
  paid: PAID,
});

/** What an incident history answers, for the API's document. */
export const HISTORY_SCHEMAS: Record<string, Schema> = {
  IncidentHistory: object({
    from: day,
    until: day,
    asOf: { type: 'string', format: 'date-time' },
    total: GROUP,
    byMonth: listOf(GROUP),
    byCraft: listOf(GROUP),
    byStation: listOf(GROUP),
    byType: listOf(GROUP),
    lines: listOf(
      object({
        reference: text,
        day,
        types: listOf(text),
        craft: listOf(text),
        stations: listOf(text),
        people: PEOPLE,
        damage: SUM,
        paid: PAID,
      }),
    ),
    outings: { type: ['integer', 'null'], description: 'Null while none was entered' },
  }),
};
