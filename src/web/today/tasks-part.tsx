import { Link } from 'wouter-preact';
import { useAsk } from '../ask/use-ask.js';
import type { TaskLine } from '../follow-up/service-answers.js';
import { Empty } from '../look/notes.js';
import { tellLeft } from '../look/tell-left.js';
import { useNow } from '../look/use-now.js';
import { useSession } from '../session/session.js';
import { followUp as sayTask } from '../words/follow-up.js';
import { today as say } from '../words/today.js';
import { DayLine } from './day-line.js';
import { DayPart } from './day-part.js';
import type { Paged } from './service-answers.js';

/** What is overdue or due within a day, the soonest first. */
export function TasksPart() {
  const now = useNow();
  const { me } = useSession();
  const asked = useAsk<Paged<TaskLine>>('/api/tasks?due=day&limit=6', { keep: true });
  return (
    <DayPart title={say.tasks.title} asked={asked}>
      {({ items, next }) => (
        <>
          {items.length === 0 && (
            <Empty>
              <p>{say.tasks.none}</p>
            </Empty>
          )}
          <ul class="day-lines">
            {items.map(({ id, incident, reference, title, dueAt, assignee, assigneeName }) => (
              <DayLine
                key={id}
                href={`/incidents/${incident}/follow-up`}
                figure={dueAt === null ? sayTask.task.noTime : tellLeft(dueAt, now)}
                title={<span lang="en">{title}</span>}
                about={`${reference} · ${
                  assignee === me?.accountId ? sayTask.task.you : (assigneeName ?? say.tasks.nobody)
                }`}
              />
            ))}
          </ul>
          <p class="links-line">
            <Link href="/shift-hand-over">{say.tasks.handOver}</Link>
            <Link href="/follow-up">{next === null ? say.tasks.all : say.tasks.more}</Link>
          </p>
        </>
      )}
    </DayPart>
  );
}
