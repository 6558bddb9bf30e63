import { useState } from 'preact/hooks';
import { queueRequest } from '../device/outbox.js';
import type { Confirm } from '../lists/confirm-dialog.js';
import { bodyOf } from '../lists/draft.js';
import type { FieldSpec } from '../lists/field-spec.js';
import { ThingForm } from '../lists/thing-form.js';
import { useSend } from '../lists/use-send.js';
import { Fold } from '../look/fold.js';
import { Note } from '../look/notes.js';
import { fleet as say } from '../words/fleet.js';
import type { Craft } from './craft-answers.js';

interface StepFormProps {
  readonly craft: Craft;
  readonly kind: keyof typeof say.steps;
  readonly specs: readonly FieldSpec[];
  /** The incident that the step is about. */
  readonly of?: { readonly incident?: string };
  readonly confirm?: Confirm;
}

/** Decided by the service on what it knows just then, so that they wait for no signal. */
const NEEDS_SIGNAL: ReadonlySet<string> = new Set(['released', 'cleared', 'start-allowed']);

/** One step of the service of a craft, behind its name. */
export function StepForm({ craft, kind, specs, of = {}, confirm }: StepFormProps) {
  const sending = useSend();
  const [done, setDone] = useState(false);
  const path = `/api/craft/${craft.id}/service-steps`;
  return (
    <Fold title={say.steps[kind]}>
      {() => (
        <>
          {done && <Note kind="saved">{say.step.done}</Note>}
          <ThingForm
            specs={specs}
            lead={say.step.lead}
            submit={say.steps[kind]}
            pending={sending.pending}
            error={sending.error}
            send={async (draft) => {
              const body = { kind, ...of, ...bodyOf(specs, draft) };
              const taken = await sending.create(path, body, ['/api/craft']);
              setDone(taken !== undefined);
              return taken !== undefined;
            }}
            {...(confirm !== undefined && { confirm })}
            {...(!NEEDS_SIGNAL.has(kind) && {
              keepHere: async (draft) => {
                const body = { kind, ...of, ...bodyOf(specs, draft), at: new Date().toISOString() };
                const about = `${craft.unitName}: ${say.steps[kind]}`;
                // Under a key of its own: it says when, which the one that found no service did not.
                await queueRequest({ line: craft.id, about, method: 'POST', path, body });
                sending.renew();
              },
            })}
          />
        </>
      )}
    </Fold>
  );
}
