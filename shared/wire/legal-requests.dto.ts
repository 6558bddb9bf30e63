import type { FieldError } from '../kernel/field-error.js';
import type { Reading } from '../kernel/reading.js';
import {
  DUE_BASES,
  type DueBasis,
  REQUEST_COURTS,
  REQUEST_KINDS,
  REQUEST_STATUSES,
  REQUEST_WAYS,
  type RequestCourt,
  type RequestDetails,
  type RequestKind,
  type RequestStatus,
  type RequestWay,
} from '../record/legal-request.js';
import { MayBeAbsent, OneOf } from './declare-fact.js';
import { account, mail, phone, words } from './fleet-values.js';
import { PageQueryDto } from './page-query.dto.js';
import { Items, Needed, Value } from './record-members.js';
import { readRecordInput } from './record-reading.js';
import { reason, uuid } from './record-requests.dto.js';
import { day, id, instant, lines, listOf, oneOf, timeZone, yesOrNo } from './record-values.js';

const name = (what: string) => words(what, 300);
const papers = listOf(id, 'ids of files of evidence');

/** What a paper says that asks for records or that they be kept. */
export class RequestDetailsDto implements RequestDetails {
  @Needed(oneOf(REQUEST_KINDS))
  kind: RequestKind;

  @Needed(name('who asks'))
  from: string;

  @Value(name('the firm, office or agency'))
  organization?: string;

  @Value(name('on whose behalf'))
  onBehalfOf?: string;

  @Value(account('an address', 500))
  address?: string;

  @Value(phone)
  phone?: string;

  @Value(mail)
  mail?: string;

  @Needed(instant)
  receivedAt: string;

  @Needed(oneOf(REQUEST_WAYS))
  way: RequestWay;

  /** Who took it. */
  @Needed(name('who took it'))
  receivedBy: string;

  @Value(account('what it asks', 20_000))
  asked?: string;

  /** Whose rules it comes under. */
  @Value(oneOf(REQUEST_COURTS))
  court?: RequestCourt;

  @Value(name('the court'))
  courtName?: string;

  @Value(words('the docket number', 100))
  docket?: string;

  /** An instant, a day of the calendar, or nobody knows. */
  @Needed(oneOf(['at', 'day', 'unknown']))
  due: RequestDetails['due'];

  @Value(instant)
  dueAt?: string;

  @Value(day)
  dueDay?: string;

  /** Of the place where it is due; that of the business where nothing is said. */
  @Value(timeZone)
  timeZone?: string;

  /** How the due time is known. */
  @Value(oneOf(DUE_BASES))
  dueBasis?: DueBasis;

  @Value(lines)
  people?: string[];

  @Value(lines)
  craft?: string[];

  @Value(day)
  periodFrom?: string;

  @Value(day)
  periodThrough?: string;

  /** Id of the account of whoever sees to it. */
  @Value(uuid)
  handler?: string;

  /** The lawyer who has seen it. */
  @Value(name('the lawyer who has seen it'))
  counsel?: string;

  @Value(instant)
  counselSawAt?: string;

  /** Files of evidence, of an incident that it concerns, that show the paper. */
  @Value(papers)
  papers?: string[];
}

/** An incident that a request concerns, and whether a hold begins there. */
class ConcernedDto {
  /** Id of the incident. */
  @Needed(uuid)
  id: string;

  /** Where nothing is said, a subpoena, a court order and a preservation letter begin one. */
  @Value(yesOrNo)
  hold?: boolean;

  /** Why none begins although the paper calls for one. */
  @Value(reason)
  reason?: string;
}

/** A request as it is logged. */
export class LogRequestDto extends RequestDetailsDto {
  /** None while it is not known which they are. */
  @Items(() => ConcernedDto)
  incidents?: ConcernedDto[];
}

/** The details as they should have been entered; the ones before stay in the history. */
export class CorrectRequestDto extends RequestDetailsDto {
  @Needed(reason)
  reason: string;
}

export class AddIncidentDto extends ConcernedDto {}

/** That a request was found not to concern an incident. */
export class RemoveIncidentDto {
  @Needed(reason)
  reason: string;
}

export class RequestStatusDto {
  @Needed(oneOf(REQUEST_STATUSES))
  status: RequestStatus;

  /** When it came to stand so; now, where nothing is said. */
  @Value(instant)
  at?: string;

  @Needed(reason)
  reason: string;
}

/** That objections were made, by whom to whom and in which words. */
export class ObjectionDto {
  @Needed(instant)
  at: string;

  @Needed(name('to whom'))
  to: string;

  @Needed(name('in which way'))
  way: string;

  @Needed(account('what was said', 8000))
  what: string;

  /** Id of one that was recorded wrongly. */
  @Value(uuid)
  replaces?: string;
}

/** What was produced. */
export class ProductionDto extends ObjectionDto {
  /** Id of the incident that it is of. */
  @Value(uuid)
  incident?: string;

  /** Id of the packet of that incident. */
  @Value(uuid)
  packet?: string;
}

/** That a paper was handed over at the counter or came by mail; whoever took it need not have read it. */
export class ServedPaperDto {
  /** Whoever handed it over, or whose name stands on it. */
  @Needed(name('who brought it, or whose name stands on it'))
  from: string;

  @Needed(instant)
  receivedAt: string;

  @Needed(oneOf(REQUEST_WAYS))
  way: RequestWay;

  /** Id of the incident that it is about, where somebody knows. */
  @Value(uuid)
  incident?: string;

  /** What they said who brought it, and where the paper lies now. */
  @Value(account('a note', 2000))
  note?: string;
}

/** Which requests a list holds: the open ones, unless the closed are asked for. */
export class RequestQueryDto extends PageQueryDto {
  @MayBeAbsent()
  @OneOf(['open', 'closed'])
  state?: 'open' | 'closed';

  @MayBeAbsent()
  @OneOf(REQUEST_KINDS)
  kind?: RequestKind;
}

/**
 * Reads the details of a request; the due time is stated as the word before it says, and a period has its days in order.
 * @example readDetails(LogRequestDto, { …, due: 'day' }) // { ok: false, errors: [{ pointer: '/dueDay', … }] }
 */
export function readDetails<T extends RequestDetailsDto>(shape: new () => T, input: unknown): Reading<T> {
  const reading = readRecordInput(shape, input);
  if (!reading.ok) return reading;
  const errors = [
    ...dueFaults(reading.value),
    ...periodFaults(reading.value),
    ...counselFaults(reading.value),
  ];
  return errors.length > 0 ? { ok: false, errors } : reading;
}

function dueFaults({ due, dueAt, dueDay, dueBasis }: RequestDetails): FieldError[] {
  const wanted: readonly (readonly [pointer: string, there: boolean, needed: boolean, detail: string])[] = [
    ['/dueAt', dueAt !== undefined, due === 'at', 'State the time at which it is due.'],
    ['/dueDay', dueDay !== undefined, due === 'day', 'State the day on which it is due.'],
    ['/dueBasis', dueBasis !== undefined, due !== 'unknown', 'Say how the due time is known.'],
  ];
  return wanted.flatMap(([pointer, there, needed, detail]) => {
    if (there === needed) return [];
    return [{ pointer, detail: needed ? detail : `Take it out: the due time is said to be "${due}".` }];
  });
}

function periodFaults({ periodFrom, periodThrough }: RequestDetails): FieldError[] {
  if (periodFrom === undefined || periodThrough === undefined || periodFrom <= periodThrough) return [];
  return [{ pointer: '/periodThrough', detail: 'Must not be before the first day.' }];
}

function counselFaults({ counsel, counselSawAt }: RequestDetails): FieldError[] {
  if (counselSawAt === undefined || counsel !== undefined) return [];
  return [{ pointer: '/counsel', detail: 'Name the lawyer who has seen it.' }];
}
