import { useState } from 'preact/hooks';
import { type TaskOwner, TASK_OWNERS } from '../../../shared/follow-up/task-template.js';
import { readWallClock } from '../../../shared/time/read-wall-clock.js';
import { useAskAll } from '../ask/use-ask-all.js';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { ErrorState, Note } from '../look/notes.js';
import { Select } from '../look/select.js';
import { followUp as say } from '../words/follow-up.js';

interface IncidentLine {
  readonly id: string;
  readonly reference: string;
  readonly summary: { readonly craft?: readonly string[] };
}

const EMPTY = { title: '', why: '', due: '', owner: 'manager' as TaskOwner };

/** A task of somebody's own beside those that were planned; of which incident, where the page is not of one. */
export function AddTaskForm({ zone, incident }: { zone: string; incident?: string }) {
  const [draft, setDraft] = useState(EMPTY);
  const [of, setOf] = useState(incident ?? '');
  const [looked, setLooked] = useState(false);
  const [said, setSaid] = useState(false);
  const [key, setKey] = useState(() => crypto.randomUUID());
  const { tell, pending, error } = useTell();
  const open = useAskAll<IncidentLine>(incident === undefined ? '/api/incidents?status=open' : null);
  const change = (part: Partial<typeof EMPTY>): void => setDraft({ ...draft, ...part });
  const title = draft.title.trim();
  const dueAt = readWallClock(draft.due, zone);
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    setSaid(false);
    if (of === '' || title === '' || dueAt === null || pending) return;
    const why = draft.why.trim();
    const body = { title, dueAt, owner: draft.owner, ...(why !== '' && { why }) };
    const path = `/api/incidents/${of}/tasks`;
    if ((await tell(path, { method: 'POST', body, key }, ['/api/tasks', path])) === undefined) return;
    setKey(crypto.randomUUID());
    setDraft(EMPTY);
    setLooked(false);
    setSaid(true);
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      {incident === undefined && (
        <Select
          label={say.add.incident}
          value={of}
          onChoose={setOf}
          none={say.add.noIncident}
          error={looked && of === '' ? say.add.incidentMissing : null}
          groups={[
            {
              options: (open.data ?? []).map(({ id, reference, summary }) => ({
                value: id,
                label: [reference, ...(summary.craft ?? [])].join(', '),
              })),
            },
          ]}
        />
      )}
      <Field
        label={say.add.what}
        value={draft.title}
        onInput={(text) => change({ title: text })}
        error={looked && title === '' ? say.add.missing : null}
      />
      <Field label={say.add.why} rows={2} value={draft.why} onInput={(why) => change({ why })} />
      <Field
        label={say.add.due}
        hint={say.add.dueHint(zone)}
        type="datetime-local"
        value={draft.due}
        onInput={(due) => change({ due })}
        error={looked && dueAt === null ? say.add.dueMissing : null}
      />
      <Choice
        legend={say.add.owner}
        options={TASK_OWNERS.map((value) => ({ value, label: say.owners[value] }))}
        value={draft.owner}
        onChoose={(owner) => change({ owner })}
      />
      {error !== null && <ErrorState error={error} />}
      {said && <Note kind="saved">{say.add.said}</Note>}
      <Button type="submit" look="main" busy={pending}>
        {say.add.button}
      </Button>
    </form>
  );
}
