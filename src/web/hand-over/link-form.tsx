import { useState } from 'preact/hooks';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { ErrorState, Note } from '../look/notes.js';
import { packetLink as say } from '../words/packet-link.js';

const newKey = (): string => crypto.randomUUID();

interface LinkFormProps {
  /** Address of the links of the packet. */
  readonly path: string;
  /** For whom the packet was made. */
  readonly name: string;
  /** Whether whoever gets it may read Spanish sooner than English, as renters do. */
  readonly asksLanguage: boolean;
}

/** Mails a link to a packet; the passcode is shown once, to be told by another way. */
export function LinkForm({ path, name, asksLanguage }: LinkFormProps) {
  const [to, setTo] = useState(name);
  const [address, setAddress] = useState('');
  const [days, setDays] = useState('');
  const [head, setHead] = useState<'yes' | 'no'>('yes');
  const [language, setLanguage] = useState<'en' | 'es'>('en');
  const [key, setKey] = useState(newKey);
  const [sent, setSent] = useState<{ to: string; passcode: string | null } | null>(null);
  const { tell, pending, error } = useTell();
  const send = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (pending) return;
    setSent(null);
    const body = {
      to: to.trim(),
      address: address.trim(),
      head,
      ...(asksLanguage && { language }),
      ...(days.trim() !== '' && { days: Number(days) }),
    };
    const answer = await tell<{ passcode: string | null }>(path, { method: 'POST', body, key }, [path]);
    if (answer === undefined) return;
    setSent({ to: body.address, passcode: answer.passcode });
    setAddress('');
    setKey(newKey());
  };
  return (
    <form class="form" onSubmit={(event) => void send(event)} noValidate>
      <p>{say.lead}</p>
      {sent !== null && (
        <Note kind="saved">
          {sent.passcode === null ? (
            <p>{say.noPasscode}</p>
          ) : (
            <>
              <p>{say.sent(sent.to)}</p>
              <p class="passcode">{sent.passcode}</p>
              <p>{say.tell}</p>
            </>
          )}
        </Note>
      )}
      <Field label={say.to} value={to} onInput={setTo} error={error?.faultAt('/to')} autoComplete="off" />
      <Field
        label={say.address}
        type="email"
        value={address}
        onInput={setAddress}
        error={error?.faultAt('/address')}
        autoComplete="off"
      />
      <Field
        label={say.days}
        hint={say.daysHint}
        inputMode="numeric"
        value={days}
        onInput={setDays}
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
      {asksLanguage && (
        <Choice
          legend={say.language}
          options={[
            { value: 'en', label: say.languages.en, about: say.languageAbout },
            { value: 'es', label: say.languages.es },
          ]}
          value={language}
          onChoose={setLanguage}
        />
      )}
      {error !== null && <ErrorState error={error} />}
      <Button type="submit" look="main" busy={pending}>
        {say.send}
      </Button>
    </form>
  );
}
