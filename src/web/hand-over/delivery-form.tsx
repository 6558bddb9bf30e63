import { useState } from 'preact/hooks';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState, Note } from '../look/notes.js';
import { handOver as say } from '../words/hand-over.js';

/** That somebody outside received a packet: from then on later packets are proven against it. */
export function DeliveryForm({ id, packet }: { id: string; packet: string }) {
  const [draft, setDraft] = useState({ to: '', way: '' });
  const [pressed, setPressed] = useState(false);
  const [done, setDone] = useState(false);
  const { tell, pending, error } = useTell();
  const lacks = (text: string): string | null => (pressed && text.trim() === '' ? say.needed : null);
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setPressed(true);
    setDone(false);
    if (draft.to.trim() === '' || draft.way.trim() === '' || pending) return;
    const path = `/api/incidents/${id}/packets`;
    const answer = await tell(`${path}/${packet}/deliveries`, { method: 'POST', body: draft }, [path]);
    if (answer === undefined) return;
    setDraft({ to: '', way: '' });
    setPressed(false);
    setDone(true);
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <Field
        label={say.deliverTo}
        value={draft.to}
        onInput={(to) => setDraft({ ...draft, to })}
        error={lacks(draft.to)}
      />
      <Field
        label={say.deliverWay}
        hint={say.deliverWayHint}
        value={draft.way}
        onInput={(way) => setDraft({ ...draft, way })}
        error={lacks(draft.way)}
      />
      {error !== null && <ErrorState error={error} />}
      {done && <Note kind="saved">{say.delivered}</Note>}
      <Button type="submit" busy={pending}>
        {say.deliverButton}
      </Button>
    </form>
  );
}
