import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useAsk } from '../ask/use-ask.js';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { ErrorState, Loading, Note } from '../look/notes.js';
import { Select } from '../look/select.js';
import { packetLink as say } from '../words/packet-link.js';

const newKey = (): string => crypto.randomUUID();

interface CounselLinkFormProps {
  readonly incident: string;
  readonly path: string;
  /** Asked anew once one was sent. */
  readonly links: string;
}

interface Lawyers {
  readonly items: readonly { readonly account: string; readonly name: string; readonly endedAt?: string }[];
}

/** Mails a link to a packet with notes for counsel, to one of the lawyers who read the incident. */
export function CounselLinkForm({ incident, path, links }: CounselLinkFormProps) {
  const { data, error: notRead, again } = useAsk<Lawyers>(`/api/incidents/${incident}/counsel`);
  const [draft, setDraft] = useState({ counsel: '', address: '', days: '' });
  const [head, setHead] = useState<'yes' | 'no'>('yes');
  const [key, setKey] = useState(newKey);
  const [pressed, setPressed] = useState(false);
  const [sent, setSent] = useState(false);
  const { tell, pending, error } = useTell();
  const lawyers = data?.items.filter(({ endedAt }) => endedAt === undefined);
  const send = async (event: Event): Promise<void> => {
    event.preventDefault();
    setPressed(true);
    setSent(false);
    const { counsel, address, days } = draft;
    if (pending || counsel === '') return;
    const body = {
      counsel,
      head,
      ...(address.trim() !== '' && { address: address.trim() }),
      ...(days.trim() !== '' && { days: Number(days) }),
    };
    if ((await tell(path, { method: 'POST', body, key }, [links])) === undefined) return;
    setDraft({ counsel: '', address: '', days: '' });
    setKey(newKey());
    setPressed(false);
    setSent(true);
  };
  if (lawyers === undefined)
    return notRead === null ? <Loading /> : <ErrorState error={notRead} again={again} />;
  if (lawyers.length === 0) {
    return (
      <>
        <p>{say.counsel.none}</p>
        <p class="links-line">
          <Link href={`/incidents/${incident}/counsel`}>{say.counsel.toCounsel}</Link>
        </p>
      </>
    );
  }
  const missing = pressed && draft.counsel === '' ? say.counsel.choose : null;
  return (
    <form class="form" onSubmit={(event) => void send(event)} noValidate>
      <p>{say.counsel.lead}</p>
      {sent && <Note kind="saved">{say.counsel.sent}</Note>}
      <Select
        label={say.counsel.whom}
        value={draft.counsel}
        none={say.counsel.choose}
        groups={[{ options: lawyers.map(({ account, name }) => ({ value: account, label: name })) }]}
        onChoose={(counsel) => setDraft({ ...draft, counsel })}
        error={missing ?? error?.faultAt('/counsel')}
      />
      <Field
        label={say.counsel.address}
        hint={say.counsel.addressHint}
        type="email"
        value={draft.address}
        onInput={(address) => setDraft({ ...draft, address })}
        error={error?.faultAt('/address')}
        autoComplete="off"
      />
      <Field
        label={say.days}
        hint={say.daysHint}
        inputMode="numeric"
        value={draft.days}
        onInput={(days) => setDraft({ ...draft, days })}
        error={error?.faultAt('/days')}
        autoComplete="off"
      />
      <Choice
        legend={say.head}
        options={[
          { value: 'yes', label: say.headYes, about: say.headYesAbout },
          { value: 'no', label: say.headNo },
        ]}
        value={head}
        onChoose={setHead}
      />
      {error !== null && <ErrorState error={error} />}
      <Button type="submit" look="main" busy={pending}>
        {say.send}
      </Button>
    </form>
  );
}
