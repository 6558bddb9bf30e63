import { Link } from 'wouter-preact';
import { useAsk } from '../ask/use-ask.js';
import { Empty } from '../look/notes.js';
import { tellInstant } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { today as say } from '../words/today.js';
import { DayLine } from './day-line.js';
import { DayPart } from './day-part.js';
import type { OpenIncident, Paged } from './service-answers.js';

interface OpenListProps {
  readonly path: string;
  readonly title: string;
  readonly none: string;
  readonly zone: string;
}

/** Open incidents, the latest call first, each leading to its record. */
export function OpenList({ path, title, none, zone }: OpenListProps) {
  const now = useNow();
  const asked = useAsk<Paged<OpenIncident>>(path, { keep: true });
  return (
    <DayPart title={title} asked={asked}>
      {({ items, next }) => (
        <>
          {items.length === 0 && (
            <Empty>
              <p>{none}</p>
            </Empty>
          )}
          <ul class="day-lines">
            {items.map((one) => (
              <DayLine
                key={one.id}
                href={`/incidents/${one.id}`}
                title={[one.reference, ...(one.summary.craft ?? [])].join(', ')}
                about={aboutOf(one, tellInstant(one.openedAt, zone, now))}
              />
            ))}
          </ul>
          {next !== null && (
            <p class="links-line">
              <Link href="/register?status=open">{say.open.all}</Link>
            </p>
          )}
        </>
      )}
    </DayPart>
  );
}

function aboutOf({ summary: { said }, tasks }: OpenIncident, opened: string): string {
  return [
    said === undefined ? say.open.nothing : say.open.said(said),
    say.open.opened(opened),
    say.open.tasks(tasks.open, tasks.overdue),
  ].join(' · ');
}
