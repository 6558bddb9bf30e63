import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { callsForHold } from '../../../shared/record/legal-request.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { Fold } from '../look/fold.js';
import { Empty, ErrorState } from '../look/notes.js';
import { Section } from '../look/section.js';
import { Sign } from '../look/sign.js';
import { tellInstant } from '../look/tell-instant.js';
import { requests as say } from '../words/requests.js';
import { FindIncident } from './incidents-field.js';
import type { ConcernedView, RequestView } from './request-answers.js';
import { useRequestStep } from './use-request-step.js';

interface PartProps {
  readonly request: RequestView;
  readonly writes: boolean;
}

/** The incidents that a request concerns, each with whether it is held, and the way to what is produced of it. */
export function ConcernedPart({ request, writes }: PartProps) {
  const { page } = say;
  const now = request.incidents.filter(({ ended }) => ended === undefined);
  return (
    <Section title={page.incidents}>
      {now.length === 0 && (
        <Empty>
          <p>{page.noIncidents}</p>
        </Empty>
      )}
      <ul class="request-entries">
        {request.incidents.map((link) => (
          <li class="request-entry" key={`${link.incident} ${link.since}`}>
            <Concerned request={request} link={link} writes={writes} />
          </li>
        ))}
      </ul>
      {writes && <Fold title={page.add}>{() => <AddIncident request={request} />}</Fold>}
    </Section>
  );
}

function Concerned({ request, link, writes }: PartProps & { link: ConcernedView }) {
  const { page } = say;
  const { incident, reference, held, hold, notHeld, ended } = link;
  if (ended !== undefined) {
    return (
      <>
        <h3>{reference}</h3>
        <p>{page.ended(tellInstant(ended.at), ended.reason)}</p>
      </>
    );
  }
  const purpose = page.purpose(say.kinds[request.kind], request.number, request.from);
  return (
    <>
      <h3>{reference}</h3>
      <p>
        <Sign of={held ? 'yes' : 'no'} /> {held ? page.held : page.notHeld}
      </p>
      {notHeld !== undefined && <p>{page.notHeldWhy(notHeld)}</p>}
      <p class="links-line unprinted">
        <Link href={`/incidents/${incident}`}>{say.toIncident}</Link>
        <Link href={`/incidents/${incident}/counsel`}>{page.holdsPage(reference)}</Link>
        {writes && (
          <Link href={`/incidents/${incident}/hand-over?purpose=${encodeURIComponent(purpose)}`}>
            {page.handOver(reference)}
          </Link>
        )}
      </p>
      {writes && hold === undefined && (
        <Fold title={page.startHold(reference)}>
          {() => <StartHold request={request} incident={incident} />}
        </Fold>
      )}
      {writes && (
        <Fold title={page.removeOne(reference)}>
          {() => <RemoveForm request={request} incident={incident} />}
        </Fold>
      )}
    </>
  );
}

function StartHold({ request, incident }: { request: RequestView; incident: string }) {
  const { send, pending, error } = useRequestStep(request);
  return (
    <div class="form">
      <p>{say.form.holdHint}</p>
      {error !== null && <ErrorState error={error} />}
      <Button look="main" busy={pending} onPress={() => void send('incidents', { id: incident, hold: true })}>
        {say.page.startHoldIt}
      </Button>
    </div>
  );
}

function RemoveForm({ request, incident }: { request: RequestView; incident: string }) {
  const [reason, setReason] = useState('');
  const { send, pending, error } = useRequestStep(request);
  return (
    <form
      class="form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        const body = reason.trim() === '' ? {} : { reason: reason.trim() };
        if (!pending) void send(`incidents/${incident}/removal`, body);
      }}
    >
      <Field
        label={`${say.page.removeReason} *`}
        hint={say.page.statusHint}
        value={reason}
        onInput={setReason}
        error={error?.faultAt('/reason')}
      />
      {error !== null && <ErrorState error={error} />}
      <Button type="submit" look="main" busy={pending}>
        {say.page.removeIt}
      </Button>
    </form>
  );
}

interface Chosen {
  readonly id: string;
  readonly reference: string;
}

function AddIncident({ request }: { request: RequestView }) {
  const { form, page } = say;
  const holds = callsForHold(request.kind);
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const [hold, setHold] = useState<'yes' | 'no'>(holds ? 'yes' : 'no');
  const [reason, setReason] = useState('');
  const { send, pending, error } = useRequestStep(request);
  const named = request.incidents.filter(({ ended }) => ended === undefined).map(({ incident }) => incident);
  const add = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (chosen === null || pending) return;
    const why = hold === 'no' && reason.trim() !== '' ? { reason: reason.trim() } : {};
    if (await send('incidents', { id: chosen.id, hold: hold === 'yes', ...why })) setChosen(null);
  };
  return (
    <form class="form" onSubmit={(event) => void add(event)} noValidate>
      {chosen === null ? (
        <FindIncident without={new Set(named)} onChoose={(id, reference) => setChosen({ id, reference })} />
      ) : (
        <>
          <Choice
            legend={form.hold(chosen.reference)}
            hint={form.holdHint}
            options={(['yes', 'no'] as const).map((value) => ({ value, label: form.holds[value] }))}
            value={hold}
            onChoose={setHold}
          />
          {hold === 'no' && holds && (
            <Field
              label={`${form.notHeld} *`}
              value={reason}
              onInput={setReason}
              error={error?.faultAt('/reason')}
            />
          )}
          {error !== null && <ErrorState error={error} />}
          <Button type="submit" look="main" busy={pending}>
            {page.addIt}
          </Button>
          <Button onPress={() => setChosen(null)}>{form.remove(chosen.reference)}</Button>
        </>
      )}
    </form>
  );
}
