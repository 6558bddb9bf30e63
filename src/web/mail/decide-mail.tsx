import { useTell } from '../ask/use-tell.js';
import { bodyOf } from '../lists/draft.js';
import type { FieldSpec } from '../lists/field-spec.js';
import { ThingForm } from '../lists/thing-form.js';
import { Fold } from '../look/fold.js';
import { mail as say } from '../words/en/mail.js';

const SPECS: readonly FieldSpec[] = [
  { name: 'reason', label: say.reason, hint: say.reasonHint, as: 'text', rows: 2, required: true },
];

interface DecideProps {
  readonly mail: { readonly id: string; readonly version: number; readonly to: string };
  readonly decision: 'resend' | 'delivered';
}

/** A person decides about a mail, and says why; what goes out again cannot be called back. */
export function DecideMail({ mail: { id, version, to }, decision }: DecideProps) {
  const telling = useTell();
  return (
    <Fold title={say[decision]}>
      {() => (
        <ThingForm
          specs={SPECS}
          submit={say[decision]}
          pending={telling.pending}
          error={telling.error}
          confirm={{
            title: `${say[decision]}: ${to}?`,
            text: decision === 'resend' ? say.resendText : say.deliveredText,
            yes: say[decision],
          }}
          send={async (draft, over) => {
            const asked = { method: 'POST', body: bodyOf(SPECS, draft), version: over ?? version } as const;
            return (await telling.tell(`/api/mail/${id}/${decision}`, asked, ['/api/mail'])) !== undefined;
          }}
        />
      )}
    </Fold>
  );
}
