import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { AskError } from '../ask/ask-error.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { session as say } from '../words/session.js';
import { enrol, useSession } from './session.js';

/** A phone becomes one of the desk's own, with a code that an administrator was shown. */
export default function EnrolPage() {
  const { device } = useSession();
  const [code, setCode] = useState('');
  const [error, setError] = useState<AskError | null>(null);
  const [busy, setBusy] = useState(false);
  const submit = async (): Promise<void> => {
    setBusy(true);
    setError(null);
    try {
      await enrol(code.trim());
      setCode('');
    } catch (caught) {
      if (!(caught instanceof AskError)) throw caught;
      setError(caught);
    } finally {
      setBusy(false);
    }
  };
  return (
    <Page title={say.enrol.title} lead={say.enrol.lead}>
      {device !== null && (
        <Note kind="saved">
          <p>{say.enrol.enrolled(device.name)}</p>
          <Link href="/">{say.enrol.toCall}</Link>
        </Note>
      )}
      <form
        class="form"
        onSubmit={(event) => {
          event.preventDefault();
          if (!busy) void submit();
        }}
      >
        {error !== null && <ErrorState error={error} />}
        <Field
          label={say.enrol.code}
          hint={say.enrol.codeHint}
          value={code}
          onInput={setCode}
          autoComplete="off"
          required
        />
        <Button type="submit" look="main" busy={busy}>
          {say.enrol.button}
        </Button>
      </form>
    </Page>
  );
}
