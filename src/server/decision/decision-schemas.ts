import { DECISION_KINDS } from '../../../shared/decision/decision.js';
import { FILING_FORMS } from '../../../shared/decision/filing.js';
import { REPORT_STATES } from '../../../shared/decision/follow-report.js';
import { FilingDto, LegalCallDto, OperatorNoticeDto } from '../../../shared/wire/decision-requests.dto.js';
import { SIGNING_SHAPES } from '../../../shared/wire/decision-signing.dto.js';
import type { Shape } from '../../../shared/wire/record-members.js';
import { schemaOf } from '../../../shared/wire/record-schema.js';
import * as example from './decision-examples.js';

type Schema = Record<string, unknown>;

const text: Schema = { type: 'string' };
const maybe = (schema: Schema): Schema => ({ ...schema, type: [schema['type'], 'null'] });
const instant: Schema = { type: 'string', format: 'date-time' };
const listOf = (items: Schema): Schema => ({ type: 'array', items });
const ref = (name: string): Schema => ({ $ref: `#/components/schemas/${name}` });
const orNull = (schema: Schema): Schema => ({ oneOf: [schema, { type: 'null' }] });

/** An object of exactly these members; a name that ends in `?` may be left out. */
function members(properties: Record<string, Schema>, ...examples: object[]): Schema {
  const names = Object.keys(properties);
  return {
    type: 'object',
    additionalProperties: false,
    required: names.filter((name) => !name.endsWith('?')),
    properties: Object.fromEntries(names.map((name) => [name.replace('?', ''), properties[name]])),
    ...(examples.length > 0 ? { examples } : {}),
  };
}

const id: Schema = { type: 'string', format: 'uuid' };
const by = members({ account: text, person: text, role: text });
const reportKey = { duty: text, vessel: maybe(text) };
const sequence: Schema = { type: 'integer', description: 'Version of the determination.' };

/** What is shown of something that was sent: the same, and who wrote it down. */
function recorded(shape: Shape, sample: object, beside: Record<string, Schema> = {}): Schema {
  const sent = schemaOf(shape) as { required?: string[]; properties: Record<string, Schema> };
  const more = { id, 'version?': { const: 1 }, by, recordedAt: instant, ...beside };
  const { required, properties } = members(more) as {
    required: string[];
    properties: Record<string, Schema>;
  };
  return {
    type: 'object',
    additionalProperties: false,
    required: [...new Set([...required, ...(sent.required ?? [])])],
    properties: { ...sent.properties, ...properties },
    examples: [sample],
  };
}

const decision = members(
  {
    id,
    'version?': { const: 1 },
    ...reportKey,
    kind: { type: 'string', enum: DECISION_KINDS },
    determination: sequence,
    signedAt: instant,
    by,
    'until?': instant,
    'questions?': listOf(text),
    'reason?': text,
    'counsel?': text,
    'answers?': id,
  },
  example.DECISION_SHOWN,
);

const reopening = members(
  {
    id,
    at: instant,
    determination: sequence,
    ...reportKey,
    'decision?': id,
    'filing?': id,
    changes: listOf(members({ what: text, text })),
  },
  example.REOPENING_SHOWN,
);

const duty = members(
  {
    ...reportKey,
    jurisdiction: text,
    kind: text,
    form: { type: 'string', enum: FILING_FORMS },
    outcome: { type: 'string', enum: ['required', 'not-required', 'undetermined'] },
    immediate: { type: 'boolean' },
    dueAt: maybe(instant),
    dueAtIfRequired: maybe(instant),
    dueBasis: maybe(text),
    authority: maybe(text),
    reporter: members({ who: text, text }),
    questions: listOf(members({ fact: maybe(text), text })),
    state: { type: 'string', enum: REPORT_STATES },
    decision: orNull(ref('Decision')),
    reopenings: listOf(ref('Reopening')),
    filings: listOf(id),
    proposal: orNull(members({ code: text, kind: text, text, until: maybe(instant) })),
    operator: orNull(members({ code: text, text })),
    callFirst: maybe(text),
    changedAt: instant,
  },
  example.DUTY_SHOWN,
);

const items = (name: string): Schema => members({ items: listOf(ref(name)) });
const withExample = (shape: Shape, sample: object): Schema => ({ ...schemaOf(shape), examples: [sample] });

/** Bodies and answers of decisions by the names that its routes give them. */
export const DECISION_SCHEMAS: Readonly<Record<string, Schema>> = {
  Duty: duty,
  DutyList: members({
    determination: { type: ['integer', 'null'], description: 'Version of the determination to sign on.' },
    items: listOf(ref('Duty')),
  }),
  DecisionDetails: { oneOf: Object.values(SIGNING_SHAPES).map(schemaOf), examples: example.SIGNINGS_SENT },
  Decision: decision,
  Reopening: reopening,
  DecisionList: members({ items: listOf(ref('Decision')), reopenings: listOf(ref('Reopening')) }),
  FilingDetails: withExample(FilingDto, example.FILING_SENT),
  Filing: recorded(FilingDto, example.FILING_SHOWN),
  FilingList: items('Filing'),
  OperatorNoticeDetails: withExample(OperatorNoticeDto, example.OPERATOR_NOTICE_SENT),
  OperatorNotice: recorded(OperatorNoticeDto, example.OPERATOR_NOTICE_SHOWN, { vessel: maybe(text) }),
  OperatorNoticeList: items('OperatorNotice'),
  LegalCallDetails: withExample(LegalCallDto, example.LEGAL_CALL_SENT),
  LegalCall: recorded(LegalCallDto, example.LEGAL_CALL_SHOWN),
  LegalCallList: items('LegalCall'),
};
