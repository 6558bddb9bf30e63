import { useState } from 'preact/hooks';
import { useAskAll } from '../ask/use-ask-all.js';
import { useTell } from '../ask/use-tell.js';
import type { AccountLine } from '../counsel/counsel-answers.js';
import { BothVersions } from '../lists/both-versions.js';
import type { Thing } from '../lists/field-spec.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { Note } from '../look/notes.js';
import { lists } from '../words/lists.js';
import { requests as say } from '../words/requests.js';
import type { RequestView } from './request-answers.js';
import { detailsBody, draftOfRequest } from './request-draft.js';
import { RequestFaults } from './request-faults.js';
import { RequestFields } from './request-form.js';
import { ALL_SPECS } from './request-specs.js';

/** Puts other details in the place of those that stand; what is being written belongs to the version it began from. */
export function CorrectForm({ request, zone }: { request: RequestView; zone: string }) {
  const people = useAskAll<AccountLine>('/api/accounts').data ?? [];
  const [base, setBase] = useState(request);
  const [draft, setDraft] = useState(() => draftOfRequest(request, zone));
  const [reason, setReason] = useState('');
  const [kept, setKept] = useState(false);
  const { tell, pending, error, forget } = useTell();
  const send = async (version: number): Promise<void> => {
    setKept(false);
    const body = {
      ...detailsBody(draft, zone, base),
      ...(reason.trim() !== '' && { reason: reason.trim() }),
    };
    const answer = await tell<RequestView>(`/api/requests/${request.id}`, { method: 'PUT', body, version }, [
      '/api/requests',
      '/api/incidents',
      '/api/tasks',
    ]);
    if (answer === undefined) return;
    setBase(answer);
    setDraft(draftOfRequest(answer, zone));
    setReason('');
    setKept(true);
  };
  const current = error?.trouble === 'changed-meanwhile' ? (error.problem.current as Thing) : null;
  return (
    <form
      class="form request-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (!pending) void send(base.version);
      }}
    >
      <RequestFields
        draft={draft}
        onChange={setDraft}
        error={error}
        zone={zone}
        people={people.filter(({ active, role }) => active && role !== 'counsel')}
      />
      <Field
        label={`${say.form.reason} *`}
        value={reason}
        onInput={setReason}
        error={error?.faultAt('/reason')}
      />
      {current !== null && (
        <BothVersions
          specs={ALL_SPECS}
          draft={draft.fields}
          current={current}
          takeTheirs={() => {
            setDraft(draftOfRequest(current as unknown as RequestView, zone));
            setBase({ ...base, version: current['version'] as number });
            forget();
          }}
          sendMine={() => void send(current['version'] as number)}
        />
      )}
      {error !== null && current === null && <RequestFaults error={error} />}
      {kept && <Note kind="saved">{lists.changed}</Note>}
      <Button type="submit" look="main" busy={pending}>
        {say.form.correct}
      </Button>
    </form>
  );
}
