import { useLocation } from 'wouter-preact';
import { Page } from '../look/page.js';
import { common } from '../words/common.js';
import { session as say } from '../words/session.js';
import { SignInForm } from './sign-in-form.js';
import { useSession } from './session.js';

export default function SignInPage() {
  const { me } = useSession();
  const [, go] = useLocation();
  return (
    <Page title={say.signIn.title} lead={say.signIn.lead}>
      {me !== null && <p>{say.signIn.already(me.name, common.roles[me.role])}</p>}
      <SignInForm onDone={() => go('/')} />
    </Page>
  );
}
