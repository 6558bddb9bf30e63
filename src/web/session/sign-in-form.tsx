import { useState } from 'preact/hooks';
import { AskError } from '../ask/ask-error.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState, Note } from '../look/notes.js';
import { session as say } from '../words/session.js';
import { signIn } from './session.js';

interface SignInFormProps {
  /** The one who has to sign in, where it can be nobody else. */
  readonly as?: string;
  readonly onDone?: () => void;
}

/** Name and password. */
export function SignInForm({ as, onDone }: SignInFormProps) {
  const [name, setName] = useState(as ?? '');
  const [password, setPassword] = useState('');
  const [error, setError] = useState<AskError | null>(null);
  const [busy, setBusy] = useState(false);
  const submit = async (): Promise<void> => {
    setBusy(true);
    setError(null);
    try {
      await signIn(name, password);
      onDone?.();
    } catch (caught) {
      if (!(caught instanceof AskError)) throw caught;
      setError(caught);
      setBusy(false);
    }
  };
  return (
    <form
      class="form"
      onSubmit={(event) => {
        event.preventDefault();
        if (!busy) void submit();
      }}
    >
      {error !== null && <SignInFault error={error} />}
      <Field
        label={say.signIn.name}
        value={name}
        onInput={setName}
        autoComplete="username"
        required
        readOnly={as !== undefined}
      />
      <Field
        label={say.signIn.password}
        value={password}
        onInput={setPassword}
        type="password"
        autoComplete="current-password"
        required
      />
      <Button type="submit" look="main" busy={busy}>
        {say.signIn.button}
      </Button>
    </form>
  );
}

/** A wrong password is told in the words of the service, which say no more than they must. */
function SignInFault({ error }: { error: AskError }) {
  if (error.trouble !== 'sign-in') return <ErrorState error={error} />;
  return (
    <Note kind="error">
      <p>
        <strong>{error.problem.title}.</strong> {error.errors.map(({ detail }) => detail).join(' ')}
      </p>
    </Note>
  );
}
