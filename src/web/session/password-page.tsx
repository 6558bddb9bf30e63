import { Page } from '../look/page.js';
import { session as say } from '../words/session.js';
import { PasswordForm } from './password-form.js';

export default function PasswordPage() {
  return (
    <Page title={say.password.title}>
      <PasswordForm />
    </Page>
  );
}
