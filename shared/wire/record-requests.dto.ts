import type { Call } from '../call/call.js';
import type { IncidentStatus } from '../record/incident-record.js';
import { isObject } from './is-object.js';
import { Needed, Part, Value, type ValueRule } from './record-members.js';
import { CallDto } from './record-call.dto.js';
import { count, day, oneOf, text, line } from './record-values.js';

const UUID = /^[\da-f]{8}-[\da-f]{4}-[1-8][\da-f]{3}-[89ab][\da-f]{3}-[\da-f]{12}$/;

export const uuid: ValueRule = {
  expected: 'a UUID in small letters (RFC 9562)',
  faultOf: (value) =>
    typeof value === 'string' && UUID.test(value) ? null : 'Must be a UUID in small letters (RFC 9562).',
  schema: { type: 'string', format: 'uuid' },
};

const document: ValueRule = {
  expected: 'the section as an object',
  faultOf: (value) => (isObject(value) ? null : 'Must be the section as an object.'),
  schema: { type: 'object' },
};

const path: ValueRule = {
  expected: 'the path of a field, such as /people/p1/phone',
  faultOf: (value) =>
    typeof value === 'string' && /^(\/[^/]+)+$/.test(value) && value.length <= 500
      ? null
      : 'Must be the path of a field, such as /people/p1/phone.',
  schema: { type: 'string', pattern: '^(/[^/]+)+$' },
};

export const reason: ValueRule = {
  expected: 'the reason in a few words',
  faultOf: (value) =>
    typeof value === 'string' && value.trim() === ''
      ? 'Must say the reason in a few words.'
      : text.faultOf(value),
  schema: { type: 'string', minLength: 1 },
};

/** Opens an incident. An empty body is one: somebody pressed the button. */
export class OpenIncidentDto {
  /** Made by the device, so that it can write on while the signal is gone. */
  @Value(uuid)
  id?: string;

  @Part(() => CallDto)
  call?: Call;
}

/** Finishes a section, or amends a finished one. */
export class WriteSectionDto {
  @Needed(document)
  document: object;

  /** Needed when finished or another's words are altered. */
  @Value(reason)
  reason?: string;
}

/** What is being written and not finished; it need not be whole. */
export class WriteDraftDto {
  @Needed(document)
  document: object;

  /** The version of the section that it began from. */
  @Value(count)
  version?: number;
}

/** Takes a field out; while the incident is held, on the direction of counsel, who is named. */
export class WithdrawDto {
  @Needed(path)
  path: string;

  @Needed(reason)
  reason: string;

  @Value(line)
  counsel?: string;

  @Value(day)
  directedOn?: string;
}

/** Takes the words of an amendment's reason out. */
export class WithdrawReasonDto {
  @Needed(reason)
  reason: string;

  @Value(line)
  counsel?: string;

  @Value(day)
  directedOn?: string;
}

const STATUSES: readonly IncidentStatus[] = ['open', 'closed'];

export class SetStatusDto {
  @Needed(oneOf(STATUSES))
  status: IncidentStatus;

  @Needed(reason)
  reason: string;
}

/** Joins two calls about one event; both keep their references. */
export class SameEventDto {
  /** Id of the other incident. */
  @Needed(uuid)
  incident: string;

  @Needed(reason)
  reason: string;
}

/** Counsel asks for notes; without such a request there are none. */
export class CounselRequestDto {
  /** Name of the lawyer who asked. */
  @Needed(line)
  counsel: string;

  /** Account of that lawyer in the service, where there is one: it then reads this incident. */
  @Value(line)
  counselAccount?: string;

  @Needed(day)
  requestedOn: string;
}

export class PrivilegedEntryDto {
  @Needed(text)
  words: string;
}
