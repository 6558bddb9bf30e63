import { useState } from 'preact/hooks';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState } from '../look/notes.js';
import { Ticks } from '../look/ticks.js';
import { followUp as say } from '../words/follow-up.js';

interface StatusProps {
  readonly incident: string;
  readonly status: 'open' | 'closed';
  readonly version: number;
  /** How many things speak against closing it. */
  readonly unfinished: number;
}

/** Closes the incident, or opens it again, with a reason that stays in the record. */
export function StatusForm({ incident, status, version, unfinished }: StatusProps) {
  const [reason, setReason] = useState('');
  const [read, setRead] = useState<ReadonlySet<'read'>>(new Set());
  const [looked, setLooked] = useState(false);
  const { tell, pending, error } = useTell();
  const closes = status === 'open';
  const noReason = reason.trim() === '';
  const unread = closes && unfinished > 0 && !read.has('read');
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (noReason || unread || pending) return;
    const path = `/api/incidents/${incident}`;
    const body = { status: closes ? 'closed' : 'open', reason: reason.trim() };
    await tell(`${path}/status`, { method: 'PUT', body, version }, [path, '/api/register', '/api/tasks']);
  };
  return (
    <form class="form unprinted" onSubmit={(event) => void submit(event)} noValidate>
      {closes && unfinished > 0 && (
        <Ticks
          legend={say.closing.against(unfinished)}
          options={[{ value: 'read', label: say.closing.read }]}
          ticked={read}
          onTick={setRead}
          error={looked && unread ? say.closing.readMissing : null}
        />
      )}
      <Field
        label={closes ? say.closing.reason : say.closing.reopenReason}
        rows={3}
        value={reason}
        onInput={setReason}
        error={looked && noReason ? say.closing.reasonMissing : null}
      />
      {error !== null && <ErrorState error={error} />}
      <Button type="submit" busy={pending}>
        {buttonOf(closes, unfinished)}
      </Button>
    </form>
  );
}

function buttonOf(closes: boolean, unfinished: number): string {
  if (!closes) return say.closing.reopen;
  return unfinished > 0 ? say.closing.closeAnyway : say.closing.close;
}
