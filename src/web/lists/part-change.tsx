import { useState } from 'preact/hooks';
import { useTell } from '../ask/use-tell.js';
import { Note, UndoStrip } from '../look/notes.js';
import { lists as say } from '../words/lists.js';
import { changeOf, draftOf } from './draft.js';
import type { FieldSpec, Thing } from './field-spec.js';
import { ThingForm } from './thing-form.js';

interface PartChangeProps {
  /** Where it is changed in part, such as `/api/accounts/a1`. */
  readonly path: string;
  readonly specs: readonly FieldSpec[];
  readonly thing: Thing;
  readonly submit: string;
  readonly touches: readonly string[];
}

type Done = { readonly before: Thing } | 'undone' | 'unchanged' | null;

/** Changes a thing in part: only what is different is sent. What was just changed can be put back. */
export function PartChange({ path, specs, thing, submit, touches }: PartChangeProps) {
  const telling = useTell();
  const [base, setBase] = useState(thing);
  const [done, setDone] = useState<Done>(null);
  const patch = async (body: Thing, version: number): Promise<boolean> => {
    const answer = await telling.tell<Thing>(path, { method: 'PATCH', body, version }, touches);
    if (answer !== undefined) setBase(answer);
    return answer !== undefined;
  };
  const undo = async (before: Thing): Promise<void> => {
    const body = changeOf(specs, base, draftOf(specs, before));
    if (await patch(body, base['version'] as number)) setDone('undone');
  };
  return (
    <>
      {done === 'undone' && <Note kind="saved">{say.undone}</Note>}
      {done === 'unchanged' && <Note>{say.unchanged}</Note>}
      {done !== null && typeof done === 'object' && (
        <UndoStrip undo={() => void undo(done.before)}>{say.changed}</UndoStrip>
      )}
      <ThingForm
        key={base['version']}
        specs={specs}
        first={base}
        submit={submit}
        pending={telling.pending}
        error={telling.error}
        send={async (draft, over) => {
          const body = changeOf(specs, base, draft);
          if (Object.keys(body).length === 0) {
            setDone('unchanged');
            return true;
          }
          const before = base;
          if (!(await patch(body, over ?? (base['version'] as number)))) return false;
          setDone({ before });
          return true;
        }}
      />
    </>
  );
}
