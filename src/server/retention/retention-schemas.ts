import { RETENTION_STATES } from '../../../shared/retention/retention-line.js';
import { PERIOD_STARTS } from '../../../shared/retention/retention-form.js';
import { schemaOf } from '../../../shared/wire/record-schema.js';
import { RetentionDecisionDto, RetentionPeriodDto } from '../../../shared/wire/retention-requests.dto.js';

type Schema = Record<string, unknown>;

const text: Schema = { type: 'string' };
const maybeText: Schema = { type: ['string', 'null'] };
const maybeDay: Schema = { type: ['string', 'null'], format: 'date' };
const id: Schema = { type: 'string', format: 'uuid' };
const maybeId: Schema = { type: ['string', 'null'], format: 'uuid' };
const whole: Schema = { type: 'integer', minimum: 0 };
const counts: Schema = { type: 'object', additionalProperties: whole };
const BASIS: Schema = { enum: ['read-primary', 'read-agency', 'read-secondary', 'memory', 'choice'] };
const listOf = (items: Schema): Schema => ({ type: 'array', items });
const members = (properties: Record<string, Schema>, ...optional: string[]): Schema => ({
  type: 'object',
  additionalProperties: false,
  required: Object.keys(properties).filter((name) => !optional.includes(name)),
  properties,
});

const LINE = members({
  id: text,
  version: whole,
  kind: text,
  incidentId: maybeId,
  reference: maybeText,
  month: maybeText,
  state: { enum: RETENTION_STATES },
  earliest: maybeDay,
  latest: maybeDay,
  periods: listOf(
    members({
      id: text,
      months: whole,
      earliest: maybeDay,
      latest: maybeDay,
      applies: { enum: ['true', 'unknown'] },
      reason: text,
      citation: maybeText,
      basis: BASIS,
      doubts: listOf(text),
    }),
  ),
  missing: listOf(text),
  stops: listOf(members({ by: text, id: text, words: text })),
  holds: counts,
  keptUntil: maybeDay,
});

const DECISION = members({
  id,
  kind: text,
  incidentId: maybeId,
  reference: maybeText,
  month: maybeText,
  decision: { enum: ['delete', 'keep'] },
  reason: text,
  keepUntil: maybeDay,
  counsel: maybeText,
  directedOn: maybeDay,
  gone: counts,
  person: text,
  role: text,
  accountId: text,
  at: { type: 'string', format: 'date-time' },
});

const PERIOD = members(
  {
    id: text,
    months: whole,
    from: { enum: PERIOD_STARTS },
    reason: text,
    citation: maybeText,
    basis: BASIS,
    onlyIf: text,
    notIn: listOf(text),
    doubts: listOf(text),
    chosenMonths: { type: ['integer', 'null'] },
    chosenWhy: maybeText,
    version: whole,
  },
  'onlyIf',
  'notIn',
);

const KIND = members(
  {
    id: text,
    title: text,
    of: { enum: ['incident', 'outings', 'mails'] },
    fields: { oneOf: [text, listOf(text)] },
    parts: listOf(text),
    goes: listOf(text),
    stays: listOf(text),
    periods: listOf(PERIOD),
    counsel: { type: 'boolean' },
  },
  'fields',
  'parts',
  'counsel',
);

const MAJORITY = members({
  years: whole,
  later: counts,
  citation: text,
  basis: BASIS,
});

/** Requests and answers about how long what is kept. */
export const RETENTION_SCHEMAS: Record<string, Schema> = {
  RetentionPage: members({
    today: { type: 'string', format: 'date' },
    counts,
    items: listOf(LINE),
    next: maybeText,
  }),
  RetentionKinds: members({ soonDays: whole, majority: MAJORITY, kinds: listOf(KIND) }),
  RetentionDecision: DECISION,
  RetentionDecisionPage: members({ items: listOf(DECISION), next: maybeText }),
  RetentionDecisionSent: {
    ...schemaOf(RetentionDecisionDto),
    examples: [
      {
        kind: 'medical',
        incident: '3f6c2f1e-5b1d-4c59-9d0e-2f4f6a1c7b10',
        decision: 'delete',
        reason: 'Every period is over, and nobody has claimed.',
      },
    ],
  },
  RetentionPeriodSent: {
    ...schemaOf(RetentionPeriodDto),
    examples: [{ months: 144, reason: 'Our insurer asks for twelve years.' }],
  },
};
