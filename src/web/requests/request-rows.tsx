import type { ComponentChildren } from 'preact';
import { DefinitionRows } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { requests as say } from '../words/requests.js';
import type { RequestView } from './request-answers.js';

/** What the paper says, as it was entered; what nobody entered has no line, but for what matters when it is missing. */
export function RequestDetailsRows({ request, zone }: { request: RequestView; zone: string }) {
  const { form, page } = say;
  const { counsel, counselSawAt, due, dueInstant, dueBasis, people, craft } = request;
  const dueWords = due === 'unknown' || dueInstant === null ? page.dueUnknown : tellInstant(dueInstant, zone);
  const rows: readonly (readonly [string, ComponentChildren | undefined, (string | undefined)?])[] = [
    [form.who, request.from],
    [form.organization, request.organization],
    [form.onBehalfOf, request.onBehalfOf],
    [form.address, request.address && <span class="request-words">{request.address}</span>],
    [form.phone, request.phone && <a href={`tel:${request.phone}`}>{request.phone}</a>],
    [form.mail, request.mail],
    [form.receivedAt, tellInstant(request.receivedAt, zone), say.ways[request.way]],
    [form.receivedBy, request.receivedBy],
    [page.due, dueWords, dueBasis && say.bases[dueBasis]],
    [form.asked, request.asked && <span class="request-words">{request.asked}</span>],
    [form.people, people?.join(', ')],
    [form.craft, craft?.join(', ')],
    [form.periodFrom, request.periodFrom && wholeDay(request.periodFrom)],
    [form.periodThrough, request.periodThrough && wholeDay(request.periodThrough)],
    [form.court, request.court && say.courts[request.court], request.courtName],
    [form.docket, request.docket],
    [page.handledBy, request.handlerName ?? form.nobody],
    [
      form.counsel,
      counsel === undefined || counselSawAt === undefined
        ? (counsel ?? page.counselNot)
        : page.counselSaw(counsel, tellInstant(counselSawAt, zone)),
    ],
  ];
  return (
    <DefinitionRows
      rows={rows.flatMap(([term, value, about]) =>
        value === undefined || value === '' ? [] : [{ term, value, ...(about !== undefined && { about }) }],
      )}
    />
  );
}

/** `Sat, 13 Jun 2026` of a day such as 2026-06-13: what a paper asks may be of another year. */
function wholeDay(day: string): string {
  return new Date(`${day}T12:00:00Z`).toLocaleDateString('en-GB', {
    timeZone: 'UTC',
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    year: 'numeric',
  });
}
