import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { AskError } from '../ask/ask-error.js';
import { askAgain } from '../ask/use-ask.js';
import { useOutbox } from '../device/outbox.js';
import { Button } from '../look/button.js';
import { ErrorState, Note } from '../look/notes.js';
import { useSession } from '../session/session.js';
import { notBack as say } from '../words/not-back.js';
import type { NotBackReceipt } from './not-back-answers.js';
import { notBackPath } from './not-back-queue.js';
import { noteReceipt } from './receipts.js';
import { sendOrKeep } from './send-or-keep.js';

/** Makes an incident of it, whoever presses and however often: one at most. Also without signal. */
export function BecomeIncident({ known }: { known: NotBackReceipt }) {
  const { id, unit, incidentId } = known;
  const { me } = useSession();
  const [key] = useState(() => crypto.randomUUID());
  const [pending, setPending] = useState(false);
  const [error, setError] = useState<AskError | null>(null);
  const path = `${notBackPath(id)}/incident`;
  const isKept = useOutbox(id).some((item) => item.kind === 'request' && item.path === path);
  const become = async (): Promise<void> => {
    setPending(true);
    setError(null);
    try {
      const about = say.about.incident(unit);
      const answer = await sendOrKeep<NotBackReceipt>({ line: id, about, path, body: {}, key });
      if (answer !== null) await noteReceipt(answer);
      await Promise.all(['/api/not-back', '/api/outings', '/api/incidents'].map(askAgain));
    } catch (caught) {
      if (!(caught instanceof AskError)) throw caught;
      setError(caught);
    } finally {
      setPending(false);
    }
  };
  if (incidentId !== null) {
    return (
      <>
        <Note kind="saved">{say.incident.became}</Note>
        {me !== null && (
          <Link class="button main" href={`/incidents/${incidentId}`}>
            {say.incident.open}
          </Link>
        )}
      </>
    );
  }
  if (isKept) return <Note kind="offline">{say.incident.kept}</Note>;
  return (
    <>
      {error !== null && <ErrorState error={error} />}
      <Button look="act" busy={pending} onPress={() => void become()}>
        {say.incident.become}
      </Button>
    </>
  );
}
