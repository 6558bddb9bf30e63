import { Link } from 'wouter-preact';
import { Page } from '../look/page.js';
import { session as say } from '../words/session.js';
import { pin } from '../words/pin.js';
import { NoticeForm } from './notice-form.js';
import { PasswordForm } from './password-form.js';

export default function PasswordPage() {
  return (
    <Page title={say.password.title}>
      <PasswordForm />
      <NoticeForm />
      <p class="links-line">
        <Link href="/pin">{pin.toPin}</Link>
      </p>
    </Page>
  );
}
