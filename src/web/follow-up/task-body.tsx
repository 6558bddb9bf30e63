import { useAsk } from '../ask/use-ask.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Fold } from '../look/fold.js';
import { DefinitionRows, type Row } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { followUp as say } from '../words/follow-up.js';
import type { TaskLine, TaskWithEvents } from './service-answers.js';
import { taskPath } from './use-step.js';

/** Why a task is called for, by which source, and what is asked to show it. The service's words are English. */
export function TaskBody({ task, zone }: { task: TaskLine; zone: string }) {
  const now = useNow();
  const { why, source, evidenceAsked, dueWhy, restsOn, acknowledgedAt, acknowledgedBy } = task;
  const row = (term: string, words: string): Row[] =>
    words === '' ? [] : [{ term, value: <span lang="en">{words}</span> }];
  return (
    <>
      <DefinitionRows
        rows={[
          ...row(say.task.why, why),
          ...row(say.task.evidence, evidenceAsked),
          ...row(say.task.due, dueWhy),
          ...row(say.task.restsOn, restsOn.join('; ')),
          ...row(say.task.source, source),
        ]}
      />
      {acknowledgedAt !== null && (
        <p>{say.task.acknowledged(acknowledgedBy ?? '', tellInstant(acknowledgedAt, zone, now))}</p>
      )}
    </>
  );
}

/** Everything that happened to a task, behind a fold. */
export function TaskHistory({ task, zone }: { task: TaskLine; zone: string }) {
  return <Fold title={say.task.happened}>{() => <Happened task={task} zone={zone} />}</Fold>;
}

function Happened({ task, zone }: { task: TaskLine; zone: string }) {
  const now = useNow();
  const { data, error, again } = useAsk<TaskWithEvents>(taskPath(task));
  if (data === undefined) return error === null ? <Loading /> : <ErrorState error={error} again={again} />;
  const kinds: Readonly<Record<string, string>> = say.task.kinds;
  return (
    <ol class="happened">
      {data.events.map(({ sequence, kind, at, words, person }) => (
        <li key={sequence}>
          <strong>{kinds[kind] ?? kind}</strong> {tellInstant(at, zone, now)}, {person}
          {words !== null && <span class="row-about">{words}</span>}
        </li>
      ))}
    </ol>
  );
}
