import {
  callsForHold,
  type RequestKind,
  type RequestOfIncident,
  standing,
  standingOf,
} from '../record/legal-request.js';
import { dueOf, objectionsBy } from '../record/legal-request-clocks.js';
import { readInstant } from '../time/read-instant.js';
import type { TaskReach } from './task-template.js';

/** What a task about a request is about. */
export interface RequestSubject {
  readonly key: readonly string[];
  readonly words: { readonly request: string };
  /** Epoch milliseconds at which it came. */
  readonly from: number;
  /** Epoch milliseconds; null where nobody has stated a time. */
  readonly by: number | null;
  /** Each time that it was opened again after it was closed. */
  readonly changes: readonly string[];
}

export type RequestReach = Extract<TaskReach, `${string}request${string}`>;

/**
 * The requests for which work is planned. One that is answered keeps its work, which is done by that; one that was
 * withdrawn, or found not to concern the incident, has none.
 * @param zone of the incident, for a request that names none
 * @example requestSubjects('unread-request', [subpoenaThatWasRead], 'America/Chicago') // []
 */
export function requestSubjects(
  reach: RequestReach,
  requests: readonly RequestOfIncident[],
  zone: string,
): RequestSubject[] {
  return requests.flatMap((request) => {
    if (request.ended !== undefined || standingOf(request) === 'withdrawn') return [];
    if (!isMeant(reach, request)) return [];
    const by = reach === 'request-to-object' ? objectionsBy(request, zone) : dueOf(request, zone);
    return [
      {
        key: [request.id],
        words: { request: `${KIND_WORDS[request.kind]} ${request.number}` },
        from: readInstant(request.receivedAt),
        by,
        changes: reopenedAt(request),
      },
    ];
  });
}

function isMeant(reach: RequestReach, request: RequestOfIncident): boolean {
  const { kind } = request;
  switch (reach) {
    case 'request':
      return kind !== 'not-read';
    case 'unread-request':
      return kind === 'not-read';
    case 'request-for-counsel':
      return callsForHold(kind);
    case 'request-to-object':
      return kind === 'subpoena' && request.court === 'federal';
  }
}

function reopenedAt({ steps }: RequestOfIncident): string[] {
  const closes = (status: string | undefined) =>
    status === 'answered' || status === 'refused' || status === 'withdrawn';
  return steps.flatMap(({ status, at }, place) =>
    !closes(status) && closes(steps[place - 1]?.status) ? [`opened again ${at}`] : [],
  );
}

/** Without a name: titles of tasks leave the house in calendars. */
const KIND_WORDS: Readonly<Record<RequestKind, string>> = {
  'not-read': 'paper',
  subpoena: 'subpoena',
  'court-order': 'court order',
  'preservation-letter': 'preservation letter',
  'records-request': 'request for records',
  'access-request': 'request for somebody’s own data',
  'insurer-request': 'request of an insurer',
  'agency-request': 'request of an agency',
  'public-records-request': 'public-records request',
};

/** Whether what a task of a reach asks for is done, by what the request says. */
export function isRequestWorkDone(reach: RequestReach, request: RequestOfIncident): boolean {
  const status = standingOf(request);
  switch (reach) {
    case 'request':
      return status === 'answered' || status === 'refused';
    case 'unread-request':
      return false;
    case 'request-for-counsel':
      return request.counselSawAt !== undefined;
    case 'request-to-object':
      return standing(request.objections).length > 0;
  }
}
