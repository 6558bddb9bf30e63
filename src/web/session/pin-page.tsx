import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { AskError } from '../ask/ask-error.js';
import { useTell } from '../ask/use-tell.js';
import type { Draft, FieldSpec } from '../lists/field-spec.js';
import { ThingForm } from '../lists/thing-form.js';
import { Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { pin as say } from '../words/pin.js';
import { pinChosen, useSession } from './session.js';

const SPECS: readonly FieldSpec[] = [
  { name: 'password', label: say.password, as: 'password', required: true },
  { name: 'pin', label: say.pin, hint: say.pinHint, as: 'digits', required: true },
  { name: 'again', label: say.again, as: 'digits', required: true },
];

/** Nobody sees what they type here, so that it is typed twice. */
const notSame = new AskError('refused', {
  type: 'about:blank',
  title: say.notSame,
  status: 422,
  errors: [{ pointer: '/again', detail: say.notSame }],
});

/** The own PIN for shared devices. */
export default function PinPage() {
  const { me } = useSession();
  const telling = useTell();
  const [differ, setDiffer] = useState(false);
  const [done, setDone] = useState(false);
  const send = async ({ password, pin, again }: Draft): Promise<boolean> => {
    telling.forget();
    setDiffer(pin !== again);
    setDone(false);
    if (pin !== again) return false;
    if (!(await telling.does('/api/session/pin', { method: 'PUT', body: { password, pin } }))) return false;
    await pinChosen();
    setDone(true);
    return true;
  };
  return (
    <Page title={say.title} lead={say.lead}>
      {done && <Note kind="saved">{say.done}</Note>}
      {!done && me?.hasPin === true && <p>{say.has}</p>}
      <ThingForm
        specs={SPECS}
        submit={say.button}
        send={send}
        pending={telling.pending}
        error={differ ? notSame : telling.error}
      />
      <p class="links-line">
        <Link href="/password">{say.toPassword}</Link>
      </p>
    </Page>
  );
}
