import { Empty } from '../look/notes.js';
import { Sign } from '../look/sign.js';
import { ownZone, tellInstant } from '../look/tell-instant.js';
import { tellLeft } from '../look/tell-left.js';
import { useNow } from '../look/use-now.js';
import { Link } from 'wouter-preact';
import { requests as say } from '../words/requests.js';
import type { RequestLine } from './request-answers.js';

/** Requests, each with what is left until it is due, leading to its page. */
export function RequestList({ items, none }: { items: readonly RequestLine[]; none: string }) {
  const now = useNow();
  if (items.length === 0) {
    return (
      <Empty>
        <p>{none}</p>
      </Empty>
    );
  }
  return (
    <ul class="thing-list">
      {items.map((line) => (
        <li key={line.id}>
          <Link href={`/requests/${line.id}`}>
            <span class="thing-name">
              {say.kinds[line.kind]} {line.number}
            </span>
            <span class={line.overdue ? 'thing-state request-overdue' : 'thing-state'}>
              {stateOf(line, now)}
            </span>
            <span class="thing-about">{aboutOf(line, now)}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}

function stateOf(line: RequestLine, now: number) {
  const { status, statusAt, dueInstant } = line;
  if (status !== 'open' && status !== 'in-part') {
    return say.line.closed(say.statuses[status], tellInstant(statusAt, ownZone(), now));
  }
  if (dueInstant !== null) return tellLeft(firstOf(line) ?? dueInstant, now);
  return (
    <>
      <Sign of="unknown" /> {say.line.noTime}
    </>
  );
}

/** The time that runs out first; null where it is not known when it is due. */
export function firstOf({ dueInstant, objectionsBy }: RequestLine): string | null {
  if (dueInstant === null || objectionsBy === null) return dueInstant;
  return objectionsBy < dueInstant ? objectionsBy : dueInstant;
}

/** From whom, when it came, by when, about which incidents, and who sees to it. */
export function aboutOf(line: RequestLine, now: number): string {
  const { from, organization, receivedAt, dueInstant, objectionsBy, status, incidents, handlerName } = line;
  const zone = ownZone();
  return [
    say.line.from([from, organization].filter(Boolean).join(', ')),
    say.line.came(tellInstant(receivedAt, zone, now)),
    ...(dueInstant === null ? [] : [`${say.page.due.toLowerCase()} ${tellInstant(dueInstant, zone, now)}`]),
    ...(objectionsBy === null ? [] : [`${say.page.objections} ${tellInstant(objectionsBy, zone, now)}`]),
    ...(status === 'in-part' ? [say.statuses[status]] : []),
    incidents.length === 0 ? say.line.noIncident : incidents.map(({ reference }) => reference).join(', '),
    handlerName === null ? say.line.nobody : say.line.handler(handlerName),
  ].join(' · ');
}
