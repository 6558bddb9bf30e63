import { useStore } from '../app/store.js';
import { Button } from '../look/button.js';
import { Dialog } from '../look/dialog.js';
import { session as say } from '../words/session.js';
import { answerWaiting, waitingForSignIn } from './sign-in-again.js';
import { SignInForm } from './sign-in-form.js';
import { useSession } from './session.js';

/** Over the page as it stands, where the session ended: what was being sent waits for it. */
export function SignInAgain() {
  const waiting = useStore(waitingForSignIn);
  const { me } = useSession();
  if (waiting.length === 0 || me === null) return null;
  return (
    <Dialog title={say.signIn.again}>
      <p>{say.signIn.againLead(me.name)}</p>
      <SignInForm as={me.signInName} onDone={() => answerWaiting(true)} />
      <Button look="plain" onPress={() => answerWaiting(false)}>
        {say.signIn.leave}
      </Button>
    </Dialog>
  );
}
