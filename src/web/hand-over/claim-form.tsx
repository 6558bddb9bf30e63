import { useState } from 'preact/hooks';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState, Note } from '../look/notes.js';
import { handOver as say } from '../words/hand-over.js';
import type { PolicyView } from './hand-over-answers.js';

const MEMBERS = ['number', 'adjuster', 'phone', 'mail'] as const;
const LABELS = {
  number: say.claimNumber,
  adjuster: say.adjuster,
  phone: say.claimPhone,
  mail: say.claimMail,
} as const;
const TYPES = { number: 'text', adjuster: 'text', phone: 'tel', mail: 'email' } as const;

/** What the insurer calls its claim and who works on it, beginning from what stands. */
export function ClaimForm({ id, policy }: { id: string; policy: PolicyView }) {
  const { claim } = policy;
  const [draft, setDraft] = useState({
    number: claim?.number ?? '',
    adjuster: claim?.adjuster ?? '',
    phone: claim?.phone ?? '',
    mail: claim?.mail ?? '',
  });
  const [done, setDone] = useState(false);
  const { tell, pending, error } = useTell();
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setDone(false);
    if (pending) return;
    const told = Object.fromEntries(Object.entries(draft).filter(([, text]) => text.trim() !== ''));
    const path = `/api/incidents/${id}`;
    const body = { policy: policy.id, ...told };
    const answer = await tell(`${path}/claims`, { method: 'POST', body }, [`${path}/first-notices`]);
    setDone(answer !== undefined);
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      {MEMBERS.map((member) => (
        <Field
          key={member}
          label={LABELS[member]}
          type={TYPES[member]}
          value={draft[member]}
          onInput={(text) => setDraft({ ...draft, [member]: text })}
          error={error?.faultAt(`/${member}`)}
        />
      ))}
      {error !== null && <ErrorState error={error} />}
      {done && <Note kind="saved">{say.claimKept}</Note>}
      <Button type="submit" look="main" busy={pending}>
        {say.claimButton}
      </Button>
    </form>
  );
}
