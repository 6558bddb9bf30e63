import { useState } from 'preact/hooks';
import { REQUEST_STATUSES, type RequestStatus } from '../../../shared/record/legal-request.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { Fold } from '../look/fold.js';
import { momentOf } from '../look/moment.js';
import { ErrorState } from '../look/notes.js';
import { Section } from '../look/section.js';
import { Sign } from '../look/sign.js';
import { ownZone, tellInstant } from '../look/tell-instant.js';
import { requests as say } from '../words/requests.js';
import type { RequestView } from './request-answers.js';
import { useRequestStep } from './use-request-step.js';

/** How a request stands, since when and by whose word, and the way to say otherwise. */
export function StatusPart({ request, writes }: { request: RequestView; writes: boolean }) {
  const { status, steps } = request;
  const closed = status === 'answered' || status === 'refused' || status === 'withdrawn';
  return (
    <Section title={say.page.how}>
      <p class="outcome">
        <Sign of={closed ? 'no' : status === 'open' ? 'yes' : 'unknown'} /> {say.statuses[status]}
      </p>
      <ul class="request-entries">
        {steps.map(({ id, status: was, at, by, reason }) => (
          <li class="request-entry" key={id}>
            <p>
              <strong>{say.statuses[was]}</strong>
            </p>
            <p>{say.page.since(tellInstant(at), by.person, reason)}</p>
          </li>
        ))}
      </ul>
      {writes && <Fold title={say.page.setStatus}>{() => <StatusForm request={request} />}</Fold>}
    </Section>
  );
}

function StatusForm({ request }: { request: RequestView }) {
  const zone = ownZone();
  const [status, setStatus] = useState<RequestStatus | undefined>();
  const [at, setAt] = useState('');
  const [reason, setReason] = useState('');
  const { send, pending, error } = useRequestStep(request);
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    const when = momentOf(at, zone);
    if (pending || when === null) return;
    const body = {
      status,
      ...(at !== '' && { at: when }),
      ...(reason.trim() !== '' && { reason: reason.trim() }),
    };
    if (!(await send('status', body))) return;
    setStatus(undefined);
    setAt('');
    setReason('');
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <Choice
        legend={`${say.page.newStatus} *`}
        hint={say.page.statusHint}
        options={REQUEST_STATUSES.map((value) => ({ value, label: say.statuses[value] }))}
        value={status}
        onChoose={setStatus}
        error={error?.faultAt('/status')}
      />
      <Field
        label={say.page.statusAt}
        hint={say.form.receivedAtHint(zone)}
        type="datetime-local"
        value={at}
        onInput={setAt}
        error={momentOf(at, zone) === null ? say.form.notATime : error?.faultAt('/at')}
      />
      <Field
        label={`${say.page.statusReason} *`}
        rows={2}
        value={reason}
        onInput={setReason}
        error={error?.faultAt('/reason')}
      />
      {error !== null && <ErrorState error={error} />}
      <Button type="submit" look="main" busy={pending}>
        {say.page.statusSave}
      </Button>
    </form>
  );
}
