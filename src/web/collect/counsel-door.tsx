import { useState } from 'preact/hooks';
import { AskError } from '../ask/ask-error.js';
import { ask } from '../ask/ask.js';
import { Button } from '../look/button.js';
import { ErrorState, Loading, Note } from '../look/notes.js';
import { Section } from '../look/section.js';
import { PasswordForm } from '../session/password-form.js';
import { signOut, useSession } from '../session/session.js';
import { SignInForm } from '../session/sign-in-form.js';
import { collect as say } from '../words/collect.js';
import { session as saySession } from '../words/session.js';
import type { Collection } from './collection.js';

interface CounselDoorProps {
  readonly path: string;
  readonly onOpen: (collection: Collection) => void;
  /** Told when the service said no: the link may have been closed meanwhile. */
  readonly onRefused: () => void;
}

/** The lawyer signs in on the same page, and then opens it: opening is what is written down. */
export function CounselDoor({ path, onOpen, onRefused }: CounselDoorProps) {
  const { ready, me } = useSession();
  const [pending, setPending] = useState(false);
  const [error, setError] = useState<AskError | null>(null);
  const open = async (): Promise<void> => {
    setPending(true);
    setError(null);
    try {
      onOpen(await ask<Collection>(path));
    } catch (caught) {
      if (!(caught instanceof AskError)) throw caught;
      setPending(false);
      setError(caught);
      onRefused();
    }
  };
  if (!ready) return <Loading />;
  if (me === null) {
    return (
      <Section title={say.counsel.signIn}>
        <SignInForm />
      </Section>
    );
  }
  if (me.role !== 'counsel') {
    return (
      <>
        <Note kind="error">{say.counsel.wrongRole(me.name)}</Note>
        <Button onPress={() => void signOut()}>{say.counsel.signOut}</Button>
      </>
    );
  }
  if (me.passwordDue) {
    return (
      <Section title={saySession.password.title}>
        <p>{saySession.password.due}</p>
        <PasswordForm />
      </Section>
    );
  }
  return (
    <>
      <p>{say.counsel.as(me.name)}</p>
      {error !== null && <ErrorState error={error} />}
      <Button look="main" busy={pending} onPress={() => void open()}>
        {say.open}
      </Button>
    </>
  );
}
