import { HOUSE_RULE_IDS } from '../../../shared/follow-up/house-rule.js';
import { TASK_STATES } from '../../../shared/follow-up/reconcile-tasks.js';
import { TASK_OWNERS } from '../../../shared/follow-up/task-template.js';
import {
  HouseRulesDto,
  NoticeAddressDto,
  OwnTaskDto,
  ShiftHandOverDto,
  ShiftSignatureDto,
  TaskAssigneeDto,
  TaskCompletionDto,
  TaskReachedDto,
  TaskUndoingDto,
} from '../../../shared/wire/follow-up-requests.dto.js';
import { schemaOf } from '../../../shared/wire/record-schema.js';
import * as example from './follow-up-examples.js';

type Schema = Record<string, unknown>;

const text: Schema = { type: 'string' };
const id: Schema = { type: 'string', format: 'uuid' };
const instant: Schema = { type: 'string', format: 'date-time' };
const whole: Schema = { type: 'integer', minimum: 1 };
const yes: Schema = { type: 'boolean' };
const maybe = (schema: Schema): Schema => ({ ...schema, type: [schema['type'], 'null'] });
const listOf = (items: Schema): Schema => ({ type: 'array', items });
const ref = (name: string): Schema => ({ $ref: `#/components/schemas/${name}` });
const choice = (values: readonly string[]): Schema => ({ type: 'string', enum: values });

/** An object of exactly these members. */
function members(properties: Record<string, Schema>, ...examples: object[]): Schema {
  const required = Object.keys(properties);
  const shape = { type: 'object', additionalProperties: false, required, properties };
  return examples.length > 0 ? { ...shape, examples } : shape;
}
/** The same, where hand-overs that were signed earlier lack what is listed since. */
function withoutEarlier({ notBack = {}, ...properties }: Record<string, Schema>): Schema {
  return { ...members(properties), properties: { ...properties, notBack } };
}
const sent = (shape: new () => object, ...examples: object[]): Schema => ({ ...schemaOf(shape), examples });
const list = (items: Schema): Schema => members({ items: listOf(items) });
const page = (name: string): Schema =>
  members({
    items: listOf(ref(name)),
    next: { ...maybe(text), description: 'The `after` of the next page.' },
  });

const TASK: Record<string, Schema> = {
  id,
  incident: id,
  key: { ...text, description: 'The same whenever the same thing is called for.' },
  round: { ...whole, description: 'From 2 on: work that was done and is due again.' },
  template: maybe(text),
  title: text,
  why: text,
  source: text,
  owner: choice(TASK_OWNERS),
  assignee: maybe(id),
  state: choice(TASK_STATES),
  dueAt: maybe(instant),
  dueWhy: text,
  overdue: yes,
  evidenceAsked: text,
  escalates: yes,
  restsOn: listOf(text),
  duty: maybe(text),
  acknowledgedAt: maybe(instant),
  acknowledgedBy: maybe(text),
  version: { ...whole, description: 'Also sent as ETag.' },
};
const EVENT = members({
  sequence: whole,
  kind: text,
  at: instant,
  words: { ...maybe(text), description: 'Why, or the evidence of completion.' },
  evidenceIds: maybe(listOf(text)),
  dueBefore: maybe(instant),
  dueAfter: maybe(instant),
  aboutAccountId: maybe(id),
  person: text,
  accountId: maybe(id),
  device: maybe(text),
});
const SHIFT_TASK = members({
  taskId: id,
  reference: text,
  title: text,
  dueAt: maybe(instant),
  isPromise: yes,
});
const ADOPTED_RULE = members({ id: choice(HOUSE_RULE_IDS), value: maybe({ type: 'number' }) });
const WRITING = members({ automatic: yes, notice: yes, why: text });
const signature = (side: string): Record<string, Schema> => ({
  [`${side}Id`]: maybe(id),
  [`${side}Name`]: maybe(text),
  [`${side}At`]: maybe(instant),
});
const ADOPTED = {
  id,
  adoptedOn: { type: 'string', format: 'date' },
  document: text,
  rules: listOf(ADOPTED_RULE),
  person: text,
  accountId: id,
  recordedAt: instant,
};

/** Bodies and answers of follow-up by the names that its routes give them. */
export const FOLLOW_UP_SCHEMAS: Readonly<Record<string, Schema>> = {
  OwnTask: sent(OwnTaskDto, example.OWN_TASK),
  TaskCompletion: sent(TaskCompletionDto, example.COMPLETION),
  TaskUndoing: sent(TaskUndoingDto, example.UNDOING),
  TaskAssignee: sent(TaskAssigneeDto, example.ASSIGNEE),
  TaskReached: sent(TaskReachedDto, example.REACHED),
  Task: members(TASK, example.TASK),
  TaskWithEvents: members(
    { ...TASK, events: listOf(EVENT) },
    { ...example.TASK, events: [example.TASK_EVENT] },
  ),
  TaskLine: members(
    { ...TASK, reference: text, assigneeName: maybe(text) },
    { ...example.TASK, reference: '2026-0042', assigneeName: 'Ana Ruiz' },
  ),
  TaskList: list(ref('TaskLine')),
  TaskPage: page('TaskLine'),
  Escalations: list(
    members({
      reference: text,
      task: ref('Task'),
      asked: listOf(members({ accountId: id, name: text, at: instant, phone: maybe(text) })),
    }),
  ),
  CallList: members({
    station: maybe(id),
    lines: listOf(
      members({
        name: text,
        of: text,
        tel: { ...maybe(text), description: 'RFC 3966, to be tapped.' },
        phone: maybe(text),
        channel: maybe(text),
        note: maybe(text),
        about: listOf(text),
      }),
    ),
    urgent: listOf(ref('Task')),
  }),
  ClaimsClockList: list(
    members({
      id: text,
      name: text,
      citation: text,
      basis: text,
      readOn: text,
      months: whole,
      from: choice(['first-written-claim', 'occurrence']),
      what: text,
      doubts: listOf(text),
      startsAt: maybe(instant),
      endsAt: maybe(instant),
    }),
  ),
  ClosingWarnings: list(members({ kind: text, text })),
  WhoMayBeWrittenTo: members({ renter: WRITING, family: WRITING }),
  HouseRuleObservations: members({
    rules: {
      oneOf: [{ type: 'null' }, members({ adoptedOn: text, document: text, rules: listOf(ADOPTED_RULE) })],
    },
    items: listOf(
      members({
        rule: choice(HOUSE_RULE_IDS),
        stands: choice(['as-adopted', 'differs', 'not-known']),
        text,
      }),
    ),
  }),
  ShiftHandOverDetails: sent(ShiftHandOverDto, example.HAND_OVER_SENT),
  ShiftSignature: sent(ShiftSignatureDto, example.SIGNATURE),
  ShiftHandOver: members(
    {
      id,
      version: whole,
      summary: withoutEarlier({
        asOf: instant,
        openCalls: listOf(members({ incidentId: id, reference: text, openedAt: instant })),
        craftHeld: listOf(members({ craftId: id, name: text, station: maybe(text), why: listOf(text) })),
        notBack: listOf(members({ notBackId: id, unit: text, since: instant, ended: maybe(text) })),
        callBacks: listOf(SHIFT_TASK),
        dueNext: listOf(SHIFT_TASK),
      }),
      remarks: maybe(text),
      builtBy: text,
      ...signature('outgoing'),
      ...signature('incoming'),
      createdAt: instant,
      updatedAt: instant,
    },
    example.HAND_OVER,
  ),
  ShiftHandOverPage: page('ShiftHandOver'),
  HouseRulesDetails: sent(HouseRulesDto, example.HOUSE_RULES_SENT),
  AdoptedHouseRules: members(ADOPTED),
  HouseRulesStanding: members({
    offered: listOf(
      members({
        id: choice(HOUSE_RULE_IDS),
        text,
        source: text,
        value: maybe({ type: 'number' }),
        unit: maybe(text),
      }),
    ),
    adopted: listOf(ref('AdoptedHouseRules')),
    inForce: maybe(id),
  }),
  NoticeAddressDetails: sent(NoticeAddressDto, example.ADDRESS),
  NoticeAddress: members({ mail: maybe(text), phone: maybe(text) }),
};
