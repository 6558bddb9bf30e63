import { useState } from 'preact/hooks';
import { useAsk } from '../ask/use-ask.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { momentOf } from '../look/moment.js';
import { ErrorState } from '../look/notes.js';
import { followUp as say } from '../words/follow-up.js';
import { CallLines } from './call-lines.js';
import type { CallListAnswer } from './service-answers.js';
import type { TaskItemProps } from './task-props.js';
import { useStep } from './use-step.js';

/** Whom a call reached and when; the numbers stand above it, to be tapped. */
export function ReachedForm({ task, zone, onDone }: TaskItemProps) {
  const [whom, setWhom] = useState('');
  const [on, setOn] = useState('');
  const [when, setWhen] = useState('');
  const [reference, setReference] = useState('');
  const [looked, setLooked] = useState(false);
  const { take, pending, error } = useStep();
  const { data } = useAsk<CallListAnswer>(`/api/incidents/${task.incident}/call-list`, { keep: true });
  const lines = data?.lines ?? [];
  const at = momentOf(when, zone);
  const missing = whom.trim() === '';
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (missing || at === null || pending) return;
    const body = {
      whom: whom.trim(),
      at,
      ...(on.trim() !== '' && { on: on.trim() }),
      ...(reference.trim() !== '' && { theirReference: reference.trim() }),
    };
    const about = `${task.reference}: ${task.title}`;
    const answer = await take(task, { what: 'reached', body, on: 'key', about });
    if (answer !== undefined) onDone({ words: answer === 'kept' ? say.kept : say.reached.said(whom.trim()) });
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <CallLines lines={lines} />
      <Field
        label={say.reached.whom}
        value={whom}
        onInput={setWhom}
        suggestions={lines.map(({ name }) => name)}
        error={looked && missing ? say.reached.whomMissing : null}
      />
      <Field
        label={say.reached.on}
        value={on}
        onInput={setOn}
        suggestions={lines.flatMap(({ phone, channel }) => [phone, channel].filter((one) => one !== null))}
      />
      <Field
        label={say.reached.at}
        hint={say.reached.atHint(zone)}
        type="datetime-local"
        value={when}
        onInput={setWhen}
        error={looked && at === null ? say.reached.notATime : null}
      />
      <Field label={say.reached.reference} value={reference} onInput={setReference} />
      {error !== null && <ErrorState error={error} />}
      <Button type="submit" look="main" busy={pending}>
        {say.reached.button}
      </Button>
    </form>
  );
}
