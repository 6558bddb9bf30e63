import { useState } from 'preact/hooks';
import { AskError } from '../ask/ask-error.js';
import { ask } from '../ask/ask.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState } from '../look/notes.js';
import { collect as say } from '../words/collect.js';
import type { Collection } from './collected.js';

interface PasscodeFormProps {
  readonly path: string;
  readonly onOpen: (collection: Collection) => void;
  /** Told why nothing opens here any more. */
  readonly onClosed: (why: string) => void;
}

/** The passcode; a wrong one says how many tries are left. */
export function PasscodeForm({ path, onOpen, onClosed }: PasscodeFormProps) {
  const [passcode, setPasscode] = useState('');
  const [looked, setLooked] = useState(false);
  const [pending, setPending] = useState(false);
  const [error, setError] = useState<AskError | null>(null);
  const open = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (passcode.trim() === '' || pending) return;
    setPending(true);
    setError(null);
    try {
      onOpen(
        await ask<Collection>(path, { method: 'POST', body: { passcode: passcode.trim() }, quiet: true }),
      );
    } catch (caught) {
      if (!(caught instanceof AskError)) throw caught;
      setPending(false);
      const { status, errors } = caught.problem;
      if ((status === 403 || status === 404) && caught.faultAt('/passcode') === null) {
        onClosed(errors.map(({ detail }) => detail).join(' '));
      } else setError(caught);
    }
  };
  const missing = looked && passcode.trim() === '' ? say.missing : null;
  const wrong = error?.faultAt('/passcode') ?? null;
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
