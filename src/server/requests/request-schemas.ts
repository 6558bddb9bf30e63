import { REQUEST_KINDS, REQUEST_STATUSES } from '../../../shared/record/legal-request.js';
import {
  AddIncidentDto,
  CorrectRequestDto,
  LogRequestDto,
  ObjectionDto,
  ProductionDto,
  RemoveIncidentDto,
  RequestDetailsDto,
  RequestStatusDto,
  ServedPaperDto,
} from '../../../shared/wire/legal-requests.dto.js';
import type { Shape } from '../../../shared/wire/record-members.js';
import { schemaOf } from '../../../shared/wire/record-schema.js';
import * as example from './request-examples.js';

type Schema = Record<string, unknown>;

const text: Schema = { type: 'string' };
const instant: Schema = { type: 'string', format: 'date-time' };
const id: Schema = { type: 'string', format: 'uuid' };
const count: Schema = { type: 'integer', minimum: 0 };
const flag: Schema = { type: 'boolean' };
const maybe = (schema: Schema): Schema => ({ ...schema, type: [schema['type'], 'null'] });
const listOf = (items: Schema): Schema => ({ type: 'array', items });

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

/** The members of what is sent, for an answer that holds them beside its own. */
function sentMembers(shape: Shape): Record<string, Schema> {
  const { required = [], properties } = schemaOf(shape) as {
    required?: string[];
    properties: Record<string, Schema>;
  };
  return Object.fromEntries(
    Object.entries(properties).map(([name, schema]) => [required.includes(name) ? name : `${name}?`, schema]),
  );
}

const by = members({ person: text, account: maybe(text), role: maybe(text), device: maybe(text) });
const status: Schema = { enum: REQUEST_STATUSES };
const clocks = { dueInstant: maybe(instant), overdue: flag, objectionsBy: maybe(instant) };
const recorded = { id, recordedAt: instant, by };

const line = members({
  ...{ id, version: count, number: text, kind: { enum: REQUEST_KINDS }, from: text },
  ...{ organization: maybe(text), receivedAt: instant, due: { enum: ['at', 'day', 'unknown'] } },
  ...{ status, statusAt: instant, ...clocks, handlerName: maybe(text), productions: count },
  incidents: listOf(members({ incident: id, reference: text })),
});

const details = sentMembers(RequestDetailsDto);

const request = members({
  ...{ id, version: count, number: text, loggedAt: instant, by, ...details },
  ...{ status, ...clocks, handlerName: maybe(text) },
  incidents: listOf(
    members({
      ...{ incident: id, reference: text, since: instant, by, held: flag, 'hold?': id, 'notHeld?': text },
      'ended?': members({ at: instant, by, reason: text }),
    }),
  ),
  steps: listOf(members({ id, status, at: instant, recordedAt: instant, by, reason: text })),
  objections: listOf(members({ ...sentMembers(ObjectionDto), ...recorded })),
  productions: listOf(
    members({
      ...sentMembers(ProductionDto),
      ...recorded,
      'head?': members({ size: count, root: text }),
    }),
  ),
  cautions: listOf(members({ key: text, words: text, source: text })),
});

/** What requests are asked and what they answer, for the API's document. */
export const REQUEST_SCHEMAS: Record<string, Schema> = {
  LegalRequestDraft: { ...schemaOf(LogRequestDto), examples: [example.DRAFT] },
  LegalRequestCorrection: { ...schemaOf(CorrectRequestDto), examples: [example.CORRECTION] },
  LegalRequestIncident: { ...schemaOf(AddIncidentDto), examples: [example.INCIDENT] },
  LegalRequestRemoval: {
    ...schemaOf(RemoveIncidentDto),
    examples: [{ reason: 'It is about another lake.' }],
  },
  LegalRequestStatus: { ...schemaOf(RequestStatusDto), examples: [example.STATUS] },
  LegalRequestProduction: { ...schemaOf(ProductionDto), examples: [example.PRODUCTION] },
  LegalRequestObjection: { ...schemaOf(ObjectionDto), examples: [example.OBJECTION] },
  LegalRequest: request,
  LegalRequestPage: members({ items: listOf(line), next: maybe(text) }),
  LegalRequestList: members({ items: listOf(line) }),
  LegalRequestVersions: members({
    items: listOf(
      members({
        ...{ version: count, what: text, reason: maybe(text), person: text, at: instant },
        details: members(details),
      }),
    ),
  }),
  ServedPaperDraft: { ...schemaOf(ServedPaperDto), examples: [example.SERVED] },
  ServedPaper: members({ id, version: count, number: text, receivedAt: instant }, example.TAKEN),
};
