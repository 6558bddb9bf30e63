import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useAskAll } from '../ask/use-ask-all.js';
import { useManages } from '../lists/use-manages.js';
import { Button } from '../look/button.js';
import { Fold } from '../look/fold.js';
import { Empty, ErrorState, KeptNote, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { PrintButton } from '../look/print-button.js';
import { Section } from '../look/section.js';
import { ownZone } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { useSession } from '../session/session.js';
import { followUp as say } from '../words/follow-up.js';
import { AddTaskForm } from './add-task-form.js';
import { AskedSection } from './asked-section.js';
import { CalendarFeed } from './calendar-feed.js';
import { DoneStrip } from './done-strip.js';
import './follow-up.css';
import { chooseTasks, groupTasks, isOverdue } from './group-tasks.js';
import { ReadingChoice } from './reading-choice.js';
import type { TaskLine } from './service-answers.js';
import { TaskItem } from './task-item.js';
import type { TaskDone } from './task-props.js';
import { type Reading, useReading } from './use-reading.js';

const EVERY_MINUTE = 60_000;

/** The open work of all incidents, read in one of three ways. */
export default function FollowUpPage() {
  const { data, error, keptAt, again } = useAskAll<TaskLine>('/api/tasks', {
    keep: true,
    everyMs: EVERY_MINUTE,
  });
  const reading = useReading();
  const now = useNow();
  const [done, setDone] = useState<TaskDone | null>(null);
  const zone = ownZone();
  const manages = useManages();
  if (data === undefined) {
    return (
      <Page title={say.title}>
        {error === null ? <Loading /> : <ErrorState error={error} again={again} />}
      </Page>
    );
  }
  const overdue = data.filter((task) => isOverdue(task, now)).length;
  return (
    <Page
      title={say.title}
      lead={
        <p>
          {say.counted(data.length, overdue)} {say.zone(zone)}
        </p>
      }
      {...(done !== null && { actions: <DoneStrip done={done} onDone={setDone} /> })}
    >
      <PrintedBy />
      <KeptNote keptAt={keptAt} />
      <AskedSection zone={zone} onDone={setDone} />
      <ReadingChoice {...reading} />
      <Groups tasks={data} reading={reading} zone={zone} onDone={setDone} />
      <p class="links-line unprinted">
        {manages && <Link href="/house-rules">{say.rules.toRules}</Link>}
        <PrintButton />
      </p>
      <Fold title={say.add.title}>{() => <AddTaskForm zone={zone} />}</Fold>
      <Fold title={say.calendar.title}>{() => <CalendarFeed />}</Fold>
    </Page>
  );
}

interface GroupsProps {
  readonly tasks: readonly TaskLine[];
  readonly reading: Reading;
  readonly zone: string;
  readonly onDone: (done: TaskDone) => void;
}

function Groups({ tasks, reading, zone, onDone }: GroupsProps) {
  const { me } = useSession();
  const now = useNow();
  const reader = { accountId: me?.accountId, now };
  const { way, shown, read } = reading;
  const groups = groupTasks(chooseTasks(tasks, shown, reader), way, reader);
  if (groups.length === 0) {
    return (
      <Empty>
        <p>{shown === 'mine' ? say.empty.mine(tasks.length) : say.empty[shown]}</p>
        {shown !== 'all' && tasks.length > 0 && (
          <Button onPress={() => read({ show: 'all' })}>{say.empty.showAll}</Button>
        )}
      </Empty>
    );
  }
  return (
    <>
      {groups.map(({ key, title, incident, tasks: own }) => (
        <Section
          key={key}
          title={title}
          aside={
            incident === undefined ? (
              <span class="quiet">{say.count(own.length)}</span>
            ) : (
              <span class="links-line">
                <Link href={`/incidents/${incident}/follow-up`}>{say.titleOf(title)}</Link>
              </span>
            )
          }
        >
          <div class="tasks">
            {own.map((task) => (
              <TaskItem key={task.id} task={task} zone={zone} onDone={onDone} alone={way !== 'incident'} />
            ))}
          </div>
        </Section>
      ))}
    </>
  );
}
