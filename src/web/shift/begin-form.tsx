import { useState } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState } from '../look/notes.js';
import { shiftHandOver as say } from '../words/shift-hand-over.js';
import { HAND_OVERS, type HandOverAnswer } from './hand-over-answer.js';

/** Gathers what is open, with what the next shift should know besides, and leads to it. */
export function BeginForm() {
  const [remarks, setRemarks] = useState('');
  const [key] = useState(() => crypto.randomUUID());
  const { tell, pending, error } = useTell();
  const [, go] = useLocation();
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (pending) return;
    const body = remarks.trim() === '' ? {} : { remarks: remarks.trim() };
    const made = await tell<HandOverAnswer>(HAND_OVERS, { method: 'POST', body, key }, [HAND_OVERS]);
    if (made !== undefined) go(`/shift-hand-over/${made.id}`);
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <p>{say.begin.lead}</p>
      <Field
        label={say.begin.remarks}
        hint={say.begin.remarksHint}
        rows={4}
        value={remarks}
        onInput={setRemarks}
        error={error?.faultAt('/remarks')}
      />
      {error !== null && error.faultAt('/remarks') === null && <ErrorState error={error} />}
      <Button type="submit" look="main" busy={pending}>
        {say.begin.button}
      </Button>
    </form>
  );
}
