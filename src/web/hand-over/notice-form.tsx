import { useState } from 'preact/hooks';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState, Note } from '../look/notes.js';
import { useSession } from '../session/session.js';
import { handOver as say } from '../words/hand-over.js';

/** What the page says beside the record: where the craft can be seen, and whom to call. */
export function NoticeForm({ id, policy }: { id: string; policy: string }) {
  const name = useSession().me?.name ?? '';
  const [draft, setDraft] = useState({ seenAt: '', callName: name, callNumber: '' });
  const [pressed, setPressed] = useState(false);
  const [done, setDone] = useState(false);
  const [key, setKey] = useState(() => crypto.randomUUID());
  const { tell, pending, error } = useTell();
  const fault = (member: keyof typeof draft): string | null =>
    pressed && draft[member].trim() === '' ? say.needed : (error?.faultAt(`/${member}`) ?? null);
  const write = (part: Partial<typeof draft>): void => {
    setDraft({ ...draft, ...part });
    setKey(crypto.randomUUID());
  };
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setPressed(true);
    setDone(false);
    if (Object.values(draft).some((text) => text.trim() === '') || pending) return;
    const path = `/api/incidents/${id}/first-notices`;
    const answer = await tell(path, { method: 'POST', body: { policy, ...draft }, key }, [path]);
    if (answer === undefined) return;
    setKey(crypto.randomUUID());
    setDone(true);
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <Field
        label={say.seenAt}
        value={draft.seenAt}
        onInput={(seenAt) => write({ seenAt })}
        error={fault('seenAt')}
      />
      <Field
        label={say.callName}
        value={draft.callName}
        onInput={(callName) => write({ callName })}
        error={fault('callName')}
      />
      <Field
        label={say.callNumber}
        type="tel"
        value={draft.callNumber}
        onInput={(callNumber) => write({ callNumber })}
        error={fault('callNumber')}
      />
      {error !== null && <ErrorState error={error} />}
      {done && <Note kind="saved">{say.noticeMade}</Note>}
      <Button type="submit" look="main" busy={pending}>
        {say.noticeButton}
      </Button>
    </form>
  );
}
