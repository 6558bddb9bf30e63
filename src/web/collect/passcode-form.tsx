import { useState } from 'preact/hooks';
import { AskError } from '../ask/ask-error.js';
import { ask } from '../ask/ask.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState } from '../look/notes.js';
import { collect as say } from '../words/collect.js';
import type { Collection } from './collection.js';

interface PasscodeFormProps {
  readonly path: string;
  readonly triesLeft: number;
  readonly onOpen: (collection: Collection) => void;
  /** Told when the service said no: the link has fewer tries, or was closed meanwhile. */
  readonly onRefused: () => void;
}

/** The passcode; a wrong one says how many tries are left. */
export function PasscodeForm({ path, triesLeft, onOpen, onRefused }: PasscodeFormProps) {
  const [passcode, setPasscode] = useState('');
  const [looked, setLooked] = useState(false);
  const [pending, setPending] = useState(false);
  const [error, setError] = useState<AskError | null>(null);
  const [triesBefore, setTriesBefore] = useState(triesLeft);
  const open = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (passcode.trim() === '' || pending) return;
    setPending(true);
    setError(null);
    setTriesBefore(triesLeft);
    try {
      onOpen(
        await ask<Collection>(path, { method: 'POST', body: { passcode: passcode.trim() }, quiet: true }),
      );
    } catch (caught) {
      if (!(caught instanceof AskError)) throw caught;
      setPending(false);
      setError(caught);
      if (caught.trouble !== 'unreachable') onRefused();
    }
  };
  const missing = looked && passcode.trim() === '' ? say.missing : null;
  const refused = error?.faultAt('/passcode') ?? null;
  // In the words of the page once it was asked how many tries are left; until then in those of the service.
  const wrong = refused !== null && triesLeft < triesBefore ? say.wrong(triesLeft) : refused;
  return (
    <form class="form" onSubmit={(event) => void open(event)} noValidate>
      <Field
        label={say.passcode}
        hint={say.passcodeHint}
        value={passcode}
        onInput={setPasscode}
        autoComplete="one-time-code"
        error={missing ?? wrong}
      />
      {error !== null && wrong === null && <ErrorState error={error} />}
      <Button type="submit" look="main" busy={pending}>
        {say.open}
      </Button>
    </form>
  );
}
