import { useTell } from '../ask/use-tell.js';
import type { FieldSpec } from '../lists/field-spec.js';
import { ThingForm } from '../lists/thing-form.js';
import { Note } from '../look/notes.js';
import { tellClock } from '../look/tell-instant.js';
import { pin } from '../words/pin.js';
import { type PickedPerson, pickPerson } from './picked-person.js';

const { who: say } = pin;

const SPECS: readonly FieldSpec[] = [
  { name: 'pin', label: say.pin, hint: say.noPin, as: 'digits', required: true },
];

/** The person whose name is picked stands by what was entered in it. */
export function PinConfirm({ picked }: { picked: PickedPerson }) {
  const telling = useTell();
  const { accountId, since, confirmedAt } = picked;
  return (
    <>
      {confirmedAt === null ? (
        <p>{say.since(tellClock(since))}</p>
      ) : (
        <Note kind="saved">{say.confirmed(tellClock(confirmedAt))}</Note>
      )}
      <ThingForm
        specs={SPECS}
        lead={say.confirmLead}
        submit={say.confirm}
        pending={telling.pending}
        error={telling.error}
        send={async (draft) => {
          const body = { accountId, since, pin: draft['pin'] };
          const confirmed = await telling.tell<{ confirmedAt: string }>('/api/device/confirmations', {
            method: 'POST',
            body,
          });
          if (confirmed === undefined) return false;
          // What is entered from here on is confirmed by the next one.
          await pickPerson({ ...picked, since: confirmed.confirmedAt, confirmedAt: confirmed.confirmedAt });
          return true;
        }}
      />
    </>
  );
}
