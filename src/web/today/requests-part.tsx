import { Link } from 'wouter-preact';
import { useAsk } from '../ask/use-ask.js';
import { Empty } from '../look/notes.js';
import { tellLeft } from '../look/tell-left.js';
import { useNow } from '../look/use-now.js';
import type { RequestLine } from '../requests/request-answers.js';
import { aboutOf, firstOf } from '../requests/request-list.js';
import { requests as sayRequest } from '../words/requests.js';
import { today as say } from '../words/today.js';
import { DayLine } from './day-line.js';
import { DayPart } from './day-part.js';
import type { Paged } from './service-answers.js';

/** Papers that ask for records and are not answered, also those of which nobody knows which incidents they concern. */
export function RequestsPart() {
  const now = useNow();
  const asked = useAsk<Paged<RequestLine>>('/api/requests?limit=6');
  return (
    <DayPart title={say.requests.title} asked={asked}>
      {({ items, next }) => (
        <>
          {items.length === 0 && (
            <Empty>
              <p>{say.requests.none}</p>
            </Empty>
          )}
          <ul class="day-lines">
            {items.map((line) => (
              <DayLine
                key={line.id}
                href={`/requests/${line.id}`}
                figure={figureOf(line, now)}
                title={`${sayRequest.kinds[line.kind]} ${line.number}`}
                about={aboutOf(line, now)}
              />
            ))}
          </ul>
          <p class="links-line">
            <Link href="/requests">{next === null ? say.requests.all : say.requests.more}</Link>
          </p>
        </>
      )}
    </DayPart>
  );
}

function figureOf(line: RequestLine, now: number): string {
  const first = firstOf(line);
  return first === null ? sayRequest.line.noTime : tellLeft(first, now);
}
