import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import type { PageProps } from '../app/page-route.js';
import { useAsk } from '../ask/use-ask.js';
import type { DeterminationAnswer, IncidentAnswer } from '../decision/service-answers.js';
import { Fold } from '../look/fold.js';
import { Empty, ErrorState, KeptNote, Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintButton } from '../look/print-button.js';
import { PrintedBy } from '../look/printed-by.js';
import { Section } from '../look/section.js';
import { ownZone } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { useSession } from '../session/session.js';
import { followUp as say } from '../words/follow-up.js';
import { AddTaskForm } from './add-task-form.js';
import { AskedSection } from './asked-section.js';
import { CallLines } from './call-lines.js';
import { ClaimsClocks } from './claims-clocks.js';
import { ClosingSection } from './closing-section.js';
import { DoneStrip } from './done-strip.js';
import './follow-up.css';
import { isOverdue } from './group-tasks.js';
import { HouseRules } from './house-rules.js';
import type { CallListAnswer, Listed, TaskLine } from './service-answers.js';
import { TaskItem } from './task-item.js';
import type { TaskDone } from './task-props.js';
import { WhoMayBeWrittenTo } from './who-may-be-written-to.js';

const EVERY_MINUTE = 60_000;

/** The work of one incident: whom to call, what is to be done, what runs, and whether it can be closed. */
export default function IncidentFollowUpPage({ params: { id = '' } }: PageProps) {
  const path = `/api/incidents/${id}`;
  const role = useSession().me?.role;
  const now = useNow();
  const incident = useAsk<IncidentAnswer & { readonly version: number }>(path, { keep: true });
  const tasks = useAsk<Listed<TaskLine>>(`${path}/tasks`, { keep: true, everyMs: EVERY_MINUTE });
  const calls = useAsk<CallListAnswer>(`${path}/call-list`, { keep: true });
  const determined = useAsk<DeterminationAnswer>(`${path}/determination`, { keep: true });
  const [done, setDone] = useState<TaskDone | null>(null);
  const error = incident.error ?? tasks.error;
  if (incident.data === undefined || tasks.data === undefined) {
    const again = (): void => [incident, tasks].forEach((asked) => asked.again());
    return (
      <Page title={incident.data === undefined ? say.title : say.titleOf(incident.data.reference)}>
        {error === null ? <Loading /> : <ErrorState error={error} again={again} />}
      </Page>
    );
  }
  const { reference, status, version } = incident.data;
  const zone = determined.data?.determination.timeZone ?? ownZone();
  const works = role !== undefined && role !== 'counsel';
  const manages = role === 'manager' || role === 'administrator';
  const open = tasks.data.items.filter(({ state }) => state === 'open');
  const past = tasks.data.items.filter(({ state }) => state !== 'open');
  const overdue = open.filter((task) => isOverdue(task, now)).length;
  const item = (task: TaskLine) => (
    <TaskItem key={task.id} task={task} zone={zone} onDone={setDone} alone={false} />
  );
  return (
    <Page
      title={say.titleOf(reference)}
      lead={
        <p>
          {say.counted(open.length, overdue)} {say.zone(zone)}
        </p>
      }
      {...(done !== null && { actions: <DoneStrip done={done} onDone={setDone} /> })}
    >
      <PrintedBy timeZone={zone} />
      <KeptNote keptAt={tasks.keptAt} />
      {status === 'closed' && <Note>{say.incident.closed}</Note>}
      <p class="links-line unprinted">
        <Link href={`/incidents/${id}`}>{say.incident.toRecord}</Link>
        <Link href={`/incidents/${id}/duties`}>{say.incident.toDuties}</Link>
        {works && <Link href="/follow-up">{say.incident.toAll}</Link>}
        <PrintButton />
      </p>
      {works && <AskedSection zone={zone} onDone={setDone} incident={id} />}
      <Section title={say.call.title}>
        <p class="quiet">{say.call.lead}</p>
        <CallLines lines={calls.data?.lines ?? []} />
      </Section>
      <div class="sheet">
        <Section title={say.incident.open} aside={<span class="quiet">{say.count(open.length)}</span>}>
          {open.length === 0 && (
            <Empty>
              <p>{past.length === 0 ? say.empty.incident : say.empty.all}</p>
            </Empty>
          )}
          <div class="tasks">{open.map(item)}</div>
          <Fold title={say.incident.past}>
            {() =>
              past.length === 0 ? <p>{say.incident.pastNone}</p> : <div class="tasks">{past.map(item)}</div>
            }
          </Fold>
          {works && <Fold title={say.add.title}>{() => <AddTaskForm zone={zone} incident={id} />}</Fold>}
        </Section>
        <div class="margin-sections">
          <ClaimsClocks incident={id} zone={zone} />
          <WhoMayBeWrittenTo incident={id} />
          {manages && <HouseRules incident={id} />}
        </div>
      </div>
      <ClosingSection incident={id} status={status} version={version} manages={manages} />
    </Page>
  );
}
