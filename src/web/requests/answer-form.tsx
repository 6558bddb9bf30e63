import { useState } from 'preact/hooks';
import { useAsk } from '../ask/use-ask.js';
import type { PacketsAnswer } from '../hand-over/hand-over-answers.js';
import { useSend } from '../lists/use-send.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { fieldMoment, momentOf } from '../look/moment.js';
import { ErrorState } from '../look/notes.js';
import { Select } from '../look/select.js';
import { ownZone, tellInstant } from '../look/tell-instant.js';
import { handOver } from '../words/hand-over.js';
import { requests as say } from '../words/requests.js';
import type { RequestView } from './request-answers.js';
import { REQUEST_TOUCHES } from './use-request-step.js';

interface AnswerFormProps {
  readonly request: RequestView;
  readonly what: 'productions' | 'objections';
}

const EMPTY = { at: '', to: '', way: '', what: '', incident: '', packet: '', replaces: '' };

/** Enters what was produced or objected; with a packet, its head stands beside it. */
export function AnswerForm({ request, what }: AnswerFormProps) {
  const { page, form } = say;
  const zone = ownZone();
  const [only] = request.incidents.filter(({ ended }) => ended === undefined);
  const first = { ...EMPTY, to: request.from, incident: only?.incident ?? '' };
  const [draft, setDraft] = useState(first);
  const sending = useSend();
  const { error } = sending;
  const change = (part: Partial<typeof EMPTY>): void => setDraft({ ...draft, ...part });
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    const at = momentOf(draft.at, zone);
    if (sending.pending || at === null) return;
    const told = Object.entries({ ...draft, at }).filter(([, text]) => text.trim() !== '');
    const names = what === 'objections' ? ['incident', 'packet'] : [];
    const body = Object.fromEntries(told.filter(([name]) => !names.includes(name)));
    const done = await sending.create(`/api/requests/${request.id}/${what}`, body, REQUEST_TOUCHES);
    if (done !== undefined) setDraft(first);
  };
  const earlier = request[what];
  const field = (name: 'to' | 'way', label: string) => (
    <Field
      label={`${label} *`}
      value={draft[name]}
      onInput={(text) => change({ [name]: text })}
      error={error?.faultAt(`/${name}`)}
    />
  );
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      {what === 'productions' && (
        <OfIncident request={request} incident={draft.incident} packet={draft.packet} onChange={change} />
      )}
      <Field
        label={page.at}
        hint={form.receivedAtHint(zone)}
        type="datetime-local"
        value={draft.at}
        max={fieldMoment(new Date().toISOString(), zone)}
        onInput={(at) => change({ at })}
        error={momentOf(draft.at, zone) === null ? form.notATime : error?.faultAt('/at')}
      />
      {field('to', page.to)}
      {field('way', page.way)}
      <Field
        label={`${what === 'productions' ? page.what : page.objectWhat} *`}
        {...(what === 'objections' && { hint: page.objectHint })}
        rows={3}
        value={draft.what}
        onInput={(text) => change({ what: text })}
        error={error?.faultAt('/what')}
      />
      {earlier.length > 0 && (
        <Select
          label={page.wrong}
          value={draft.replaces}
          none={page.wrongNone}
          optional
          onChoose={(replaces) => change({ replaces })}
          groups={[
            { options: earlier.map(({ id, at, to }) => ({ value: id, label: `${tellInstant(at)}, ${to}` })) },
          ]}
        />
      )}
      {error !== null && <ErrorState error={error} />}
      <Button type="submit" look="main" busy={sending.pending}>
        {page.produceIt}
      </Button>
    </form>
  );
}

interface OfIncidentProps {
  readonly request: RequestView;
  readonly incident: string;
  readonly packet: string;
  readonly onChange: (part: { incident: string; packet: string }) => void;
}

function OfIncident({ request, incident, packet, onChange }: OfIncidentProps) {
  const { page } = say;
  const packets = useAsk<PacketsAnswer>(incident === '' ? null : `/api/incidents/${incident}/packets`).data;
  const named = request.incidents.filter(({ ended }) => ended === undefined);
  if (named.length === 0) return null;
  return (
    <>
      <Select
        label={page.incident}
        value={incident}
        none={page.noIncident}
        optional
        onChoose={(id) => onChange({ incident: id, packet: '' })}
        groups={[{ options: named.map((one) => ({ value: one.incident, label: one.reference })) }]}
      />
      {packets !== undefined && packets.items.length > 0 && (
        <Select
          label={page.packetField}
          value={packet}
          none={page.anyPacket}
          optional
          onChoose={(id) => onChange({ incident, packet: id })}
          groups={[
            {
              options: packets.items.map(({ id, recipient, name, madeAt }) => ({
                value: id,
                label: page.packetOption(handOver.recipients[recipient], name, tellInstant(madeAt)),
              })),
            },
          ]}
        />
      )}
    </>
  );
}
