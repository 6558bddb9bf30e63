import { useState } from 'preact/hooks';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState } from '../look/notes.js';
import { useSession } from '../session/session.js';
import { notBack as say } from '../words/not-back.js';
import type { NotBackView } from './not-back-answers.js';
import { notBackPath } from './not-back-queue.js';

/** Why this ending asks for an incident; that it is none is a manager's word, with the reason. */
export function ProposedIncident({ view: { id, ended }, why }: { view: NotBackView; why: string }) {
  const { me } = useSession();
  const [reason, setReason] = useState('');
  const [looked, setLooked] = useState(false);
  const [key] = useState(() => crypto.randomUUID());
  const { tell, pending, error } = useTell();
  const mayDeny = me?.role === 'manager' || me?.role === 'administrator';
  const sayNone = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (reason.trim() === '' || pending) return;
    const path = notBackPath(id);
    await tell(`${path}/not-incident`, { method: 'POST', body: { why: reason.trim() }, key }, [path]);
  };
  return (
    <div class="proposed">
      <h3>{say.proposes.title}</h3>
      <p>{say.proposes.why(ended ?? '', why)}</p>
      {mayDeny ? (
        <form class="form" onSubmit={(event) => void sayNone(event)} noValidate>
          <Field
            label={say.proposes.none}
            rows={2}
            value={reason}
            onInput={setReason}
            error={looked && reason.trim() === '' ? say.proposes.noneMissing : error?.faultAt('/why')}
          />
          {error !== null && <ErrorState error={error} />}
          <Button type="submit" busy={pending}>
            {say.proposes.sayNone}
          </Button>
        </form>
      ) : (
        <p class="quiet">{say.proposes.onlyManager}</p>
      )}
    </div>
  );
}
