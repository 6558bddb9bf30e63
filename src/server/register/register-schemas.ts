import { HISTORY_SCHEMAS } from './history/history-schemas.js';
import { RegisterExportDto } from '../../../shared/wire/register-queries.dto.js';
import { schemaOf } from '../../../shared/wire/record-schema.js';

const text = { type: 'string' };
const instant = { type: 'string', format: 'date-time' };
const maybeInstant = { ...instant, type: ['string', 'null'] };
const count = { type: 'integer', minimum: 0 };
const flag = { type: 'boolean' };
const maybeText = { type: ['string', 'null'] };

const DUTY = {
  type: 'object',
  properties: {
    duty: { ...text, examples: ['us-tx/accident-report'] },
    vessel: { ...text, description: 'Empty while no craft is named.' },
    outcome: { enum: ['required', 'undetermined', 'not-required'] },
    dueAt: maybeInstant,
    decision: maybeText,
    waitUntil: maybeInstant,
    filed: flag,
    supplementDue: flag,
    settled: flag,
    overdue: flag,
  },
};

/** What is known of it, in a few words; what is not known is absent. */
const SUMMARY = {
  type: 'object',
  properties: {
    said: text,
    kind: text,
    ended: text,
    craft: { type: 'array', items: text },
    occurredAt: instant,
    where: text,
    people: count,
    outcomes: { type: 'array', items: text },
    position: {
      type: 'object',
      properties: { latitude: { type: 'number' }, longitude: { type: 'number' } },
    },
    casualtyTypes: { type: 'array', items: text, examples: [['grounding']] },
  },
};

const LINE = {
  type: 'object',
  properties: {
    id: { ...text, format: 'uuid' },
    reference: { ...text, examples: ['2026-0007'] },
    status: { enum: ['open', 'closed'] },
    openedAt: instant,
    updatedAt: instant,
    version: count,
    summary: SUMMARY,
    duties: { type: 'array', items: DUTY },
    tasks: { type: 'object', properties: { open: count, overdue: count, done: count } },
  },
};

const CLOCK = {
  incident: { ...text, format: 'uuid' },
  reference: text,
  status: { enum: ['open', 'closed'] },
  craft: { type: 'array', items: text },
  duty: text,
  vessel: { ...text, description: 'Empty while no craft is named.' },
  outcome: { enum: ['required', 'undetermined', 'not-required'] },
  immediate: { ...flag, description: 'To be given without delay.' },
  dueAt: { ...maybeInstant, description: 'The earliest time by which it can be due.' },
  decision: maybeText,
  waitUntil: maybeInstant,
  supplementDue: flag,
  overdue: flag,
};

/** What the register is asked and what it answers, for the API's document. */
export const REGISTER_SCHEMAS = {
  RegisterPage: {
    type: 'object',
    properties: { items: { type: 'array', items: LINE }, next: maybeText },
  },
  ClockPage: {
    type: 'object',
    additionalProperties: false,
    required: ['items', 'next'],
    properties: {
      items: {
        type: 'array',
        items: {
          type: 'object',
          additionalProperties: false,
          required: Object.keys(CLOCK),
          properties: CLOCK,
        },
      },
      next: maybeText,
    },
    examples: [
      {
        items: [
          {
            incident: '3f6c2f1e-5b1d-4c59-9d0e-2f4f6a1c7b10',
            reference: '2026-0007',
            status: 'open',
            craft: ['PWC 7'],
            duty: 'us/accident-report',
            vessel: 'PWC-7',
            outcome: 'undetermined',
            immediate: false,
            dueAt: '2026-06-15T16:20:00.000Z',
            decision: 'wait',
            waitUntil: '2026-06-14T17:00:00.000Z',
            supplementDue: false,
            overdue: false,
          },
        ],
        next: null,
      },
    ],
  },
  RegisterCount: {
    type: 'object',
    properties: { count, timeZone: { ...text, examples: ['America/Chicago'] } },
  },
  RegisterExportRequest: {
    ...schemaOf(RegisterExportDto),
    examples: [{ format: 'xlsx', openedFrom: '2026-05-01T00:00:00Z' }],
  },
  RegisterExport: {
    type: 'object',
    properties: {
      id: { ...text, format: 'uuid' },
      state: { enum: ['running', 'ready', 'failed'] },
      startedAt: instant,
      done: { ...count, description: 'Incidents read so far; a workbook reads them once for each sheet.' },
      total: count,
      advice: maybeText,
    },
  },
  ...HISTORY_SCHEMAS,
};
