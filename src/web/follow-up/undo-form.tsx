import { useState } from 'preact/hooks';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState } from '../look/notes.js';
import { followUp as say } from '../words/follow-up.js';
import type { TaskItemProps } from './task-props.js';
import { useStep } from './use-step.js';

/** It was taken for done by mistake. That it was stays in what happened to it. */
export function UndoForm({ task, onDone }: TaskItemProps) {
  const [why, setWhy] = useState('');
  const [looked, setLooked] = useState(false);
  const { take, pending, error } = useStep();
  const missing = why.trim() === '';
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (missing || pending) return;
    const answer = await take(task, { what: 'undoing', body: { why: why.trim() }, on: 'version' });
    if (answer !== undefined) onDone({ words: say.done.undoneSaid(task.title) });
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <Field
        label={say.done.why}
        rows={2}
        value={why}
        onInput={setWhy}
        error={looked && missing ? say.done.whyMissing : null}
      />
      {error !== null && <ErrorState error={error} />}
      <Button type="submit" look="main" busy={pending}>
        {say.done.undoButton}
      </Button>
    </form>
  );
}
