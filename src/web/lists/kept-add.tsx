import { bodyOf } from './draft.js';
import type { FieldSpec } from './field-spec.js';
import { ThingForm } from './thing-form.js';
import { useSend } from './use-send.js';

interface KeptAddProps {
  /** Where it is made, such as `/api/craft`. */
  readonly path: string;
  readonly specs: readonly FieldSpec[];
  readonly submit: string;
  readonly touches: readonly string[];
  readonly lead?: string;
  readonly onAdded: (id: string) => void;
}

/** Adds a thing to a list. */
export function KeptAdd({ path, specs, submit, touches, lead, onAdded }: KeptAddProps) {
  const sending = useSend();
  return (
    <ThingForm
      specs={specs}
      submit={submit}
      {...(lead !== undefined && { lead })}
      pending={sending.pending}
      error={sending.error}
      send={async (draft) => {
        const answer = await sending.create<{ id: string }>(path, bodyOf(specs, draft), touches);
        if (answer !== undefined) onAdded(answer.id);
        return answer !== undefined;
      }}
    />
  );
}
