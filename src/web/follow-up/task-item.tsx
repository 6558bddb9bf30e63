import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useOutbox } from '../device/outbox.js';
import { tellInstant } from '../look/tell-instant.js';
import { tellLeft } from '../look/tell-left.js';
import { useNow } from '../look/use-now.js';
import { useSession } from '../session/session.js';
import { followUp as say } from '../words/follow-up.js';
import type { TaskLine } from './service-answers.js';
import type { TaskItemProps } from './task-props.js';
import { TaskActs } from './task-acts.js';
import { TaskBody, TaskHistory } from './task-body.js';
import { taskPath } from './use-step.js';

/** One task: what and by when; the rest and what can be done about it when it is opened. */
export function TaskItem(props: TaskItemProps) {
  const { task, zone, alone = true } = props;
  const [opened, setOpened] = useState(false);
  const waits = useOutbox(task.incident).some(
    (item) => item.kind === 'request' && item.path.startsWith(taskPath(task)),
  );
  return (
    <details
      class={`task ${task.state}`}
      onToggle={({ currentTarget }) => currentTarget.open && setOpened(true)}
    >
      <summary>
        <span class="task-what">
          <strong lang="en">{task.title}</strong>
          <span class="quiet">
            {alone && `${task.reference} · `}
            <Holder task={task} />
            {task.round > 1 && ` · ${say.task.round(task.round)}`}
          </span>
          {waits && <span class="quiet">{say.kept}</span>}
        </span>
        <Due task={task} zone={zone} />
      </summary>
      {opened && (
        <div class="task-inside">
          <TaskBody task={task} zone={zone} />
          <TaskActs {...props} />
          <TaskHistory task={task} zone={zone} />
          <p class="links-line">
            {alone && (
              <Link href={`/incidents/${task.incident}/follow-up`}>{say.titleOf(task.reference)}</Link>
            )}
            {task.duty !== null && <Link href={`/incidents/${task.incident}/duties`}>{say.task.duty}</Link>}
            {waits && <Link href="/unsent">{say.toUnsent}</Link>}
          </p>
        </div>
      )}
    </details>
  );
}

function Holder({ task: { state, assignee, assigneeName, owner } }: { task: TaskLine }) {
  const { me } = useSession();
  if (state !== 'open') return <>{say.task.states[state]}</>;
  if (assignee === null) return <>{say.task.nobody(say.owners[owner])}</>;
  return <>{assignee === me?.accountId ? say.task.you : say.task.has(assigneeName ?? '')}</>;
}

/** What is left, and the local time; a task that is done has no clock any more. */
function Due({ task: { dueAt, state }, zone }: { task: TaskLine; zone: string }) {
  const now = useNow();
  if (state !== 'open') return null;
  if (dueAt === null) return <span class="task-due">{say.task.noTime}</span>;
  return (
    <span class="task-due">
      <strong>{tellLeft(dueAt, now)}</strong>
      <time dateTime={dueAt}>{tellInstant(dueAt, zone, now)}</time>
    </span>
  );
}
