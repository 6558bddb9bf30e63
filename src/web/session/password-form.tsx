import { useState } from 'preact/hooks';
import { SHORTEST_PASSWORD } from '../../../shared/wire/accounts-secrets.js';
import { AskError } from '../ask/ask-error.js';
import { ask } from '../ask/ask.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState, Note } from '../look/notes.js';
import { session as say } from '../words/session.js';
import { passwordChosen } from './session.js';

/** A new password in place of the present one; faults stand at their field. */
export function PasswordForm() {
  const [currentPassword, setCurrent] = useState('');
  const [newPassword, setNew] = useState('');
  const [error, setError] = useState<AskError | null>(null);
  const [busy, setBusy] = useState(false);
  const [done, setDone] = useState(false);
  const submit = async (): Promise<void> => {
    setBusy(true);
    setError(null);
    try {
      await ask('/api/session/password', { method: 'PUT', body: { currentPassword, newPassword } });
      setDone(true);
      await passwordChosen();
    } catch (caught) {
      if (!(caught instanceof AskError)) throw caught;
      setError(caught);
    } finally {
      setBusy(false);
    }
  };
  if (done) return <Note kind="saved">{say.password.done}</Note>;
  return (
    <form
      class="form"
      onSubmit={(event) => {
        event.preventDefault();
        if (!busy) void submit();
      }}
    >
      {error !== null && error.trouble !== 'refused' && <ErrorState error={error} />}
      <Field
        label={say.password.current}
        value={currentPassword}
        onInput={setCurrent}
        type="password"
        autoComplete="current-password"
        required
        error={error?.faultAt('/currentPassword')}
      />
      <Field
        label={say.password.next}
        hint={say.password.nextHint(SHORTEST_PASSWORD)}
        value={newPassword}
        onInput={setNew}
        type="password"
        autoComplete="new-password"
        required
        error={error?.faultAt('/newPassword')}
      />
      <Button type="submit" look="main" busy={busy}>
        {say.password.button}
      </Button>
    </form>
  );
}
