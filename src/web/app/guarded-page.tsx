import { Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PasswordForm } from '../session/password-form.js';
import { useSession } from '../session/session.js';
import { SignInForm } from '../session/sign-in-form.js';
import { common } from '../words/common.js';
import { session as say } from '../words/session.js';
import { LazyPage } from './lazy-page.js';
import { maySee } from './may-see.js';
import type { PageProps, PageRoute } from './page-route.js';

/** A page for those who may see it; others sign in at the same address, or learn that it is not theirs. */
export function GuardedPage({ route, params }: { route: PageRoute } & PageProps) {
  const session = useSession();
  if (route.who.includes('anyone')) return <LazyPage key={route.path} route={route} params={params} />;
  if (!session.ready) {
    return (
      <main id="page" class="page">
        <Loading />
      </main>
    );
  }
  const may = maySee(route, session);
  if (may === 'sign-in') {
    return (
      <Page title={say.signIn.title} lead={say.signIn.lead}>
        <SignInForm />
      </Page>
    );
  }
  if (may === 'no') return <NoPermission role={session.me?.role ?? 'counsel'} />;
  if (session.me?.passwordDue === true) {
    return (
      <Page title={say.password.title} lead={say.password.due}>
        <PasswordForm />
      </Page>
    );
  }
  return <LazyPage key={route.path} route={route} params={params} />;
}

function NoPermission({ role }: { role: keyof typeof common.roles }) {
  return (
    <Page title={common.noPermission.title}>
      <p>{common.noPermission.text(common.roles[role])}</p>
      <p>{common.noPermission.ask}</p>
    </Page>
  );
}
