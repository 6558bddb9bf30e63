import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { Button } from '../look/button.js';
import { Dialog } from '../look/dialog.js';
import { Note } from '../look/notes.js';
import { outAndBack as say } from '../words/out-and-back.js';
import { MarkedStrip } from './marked-strip.js';
import { OutingForm } from './outing-form.js';
import type { Outing } from './service-answers.js';

interface OutingActionsProps {
  /** The outing that is changed, a new one, or no form. */
  readonly form: Outing | 'new' | null;
  readonly setForm: (form: Outing | 'new' | null) => void;
  readonly units: readonly string[];
}

/** In thumb's reach: the way back from the latest press, one that goes out, and the count at closing. */
export function OutingActions({ form, setForm, units }: OutingActionsProps) {
  const [done, setDone] = useState<string | null>(null);
  return (
    <>
      <MarkedStrip />
      {done !== null && <Note kind="saved">{done}</Note>}
      <Button
        look="main"
        onPress={() => {
          setDone(null);
          setForm('new');
        }}
      >
        {say.add}
      </Button>
      <Link class="button" href="/out-and-back/closing-count">
        {say.closingCount}
      </Link>
      {form !== null && (
        <Dialog title={form === 'new' ? say.add : say.changeOf(form.unit)} onClose={() => setForm(null)}>
          <OutingForm
            {...(form !== 'new' && { outing: form })}
            units={units}
            onDone={(words) => {
              setForm(null);
              setDone(words);
            }}
          />
        </Dialog>
      )}
    </>
  );
}
