import { useState } from 'preact/hooks';
import { useAsk } from '../ask/use-ask.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState } from '../look/notes.js';
import { Ticks } from '../look/ticks.js';
import type { EvidenceAnswer } from '../decision/service-answers.js';
import { followUp as say } from '../words/follow-up.js';
import type { TaskItemProps } from './task-props.js';
import { useStep } from './use-step.js';

/** A task is done when something shows it: a note, and files of the evidence where there are any. */
export function DoneForm({ task, onDone }: TaskItemProps) {
  const [evidence, setEvidence] = useState('');
  const [files, setFiles] = useState<ReadonlySet<string>>(new Set());
  const [looked, setLooked] = useState(false);
  const { take, pending, error } = useStep();
  const known = useAsk<EvidenceAnswer>(`/api/incidents/${task.incident}/evidence`, { keep: true });
  const missing = evidence.trim() === '';
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (missing || pending) return;
    const body = { evidence: evidence.trim(), ...(files.size > 0 && { evidenceIds: [...files] }) };
    const about = `${task.reference}: ${task.title}`;
    const answer = await take(task, { what: 'completion', body, on: 'version', about });
    if (answer === 'kept') onDone({ words: say.kept });
    else if (answer !== undefined)
      onDone({ words: say.done.said(task.title), undo: { ...task, version: answer.version } });
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <Field
        label={say.done.note}
        hint={task.evidenceAsked}
        rows={3}
        value={evidence}
        onInput={setEvidence}
        error={looked && missing ? say.done.missing : null}
      />
      {known.data !== undefined && (
        <Ticks
          legend={say.done.files}
          options={known.data.files.map(({ id, name, kind }) => ({ value: id, label: name ?? kind }))}
          ticked={files}
          onTick={setFiles}
          none={say.done.noFiles}
        />
      )}
      {error !== null && <ErrorState error={error} />}
      <Button type="submit" look="main" busy={pending}>
        {say.done.button}
      </Button>
    </form>
  );
}
