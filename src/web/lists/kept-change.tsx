import { useState } from 'preact/hooks';
import { useTell } from '../ask/use-tell.js';
import { Note, UndoStrip } from '../look/notes.js';
import { lists as say } from '../words/lists.js';
import { bodyOf, draftOf } from './draft.js';
import type { Draft, FieldSpec, Thing } from './field-spec.js';
import { ThingForm } from './thing-form.js';

interface KeptChangeProps {
  /** Where it is replaced, such as `/api/craft/c1`. */
  readonly path: string;
  readonly specs: readonly FieldSpec[];
  /** As the service shows it, with its version. */
  readonly thing: Thing;
  readonly submit: string;
  readonly touches: readonly string[];
}

/** Changes a thing of which every version is kept; what was just changed can be put back. */
export function KeptChange({ path, specs, thing, submit, touches }: KeptChangeProps) {
  const telling = useTell();
  // What is being written belongs to the version that it began from, whatever somebody else does meanwhile.
  const [base, setBase] = useState(thing);
  const [before, setBefore] = useState<Thing | null>(null);
  const [undone, setUndone] = useState(false);
  const put = async (body: Thing, version: number): Promise<boolean> => {
    const answer = await telling.tell<Thing>(path, { method: 'PUT', body, version }, touches);
    if (answer !== undefined) setBase(answer);
    return answer !== undefined;
  };
  const send = async (draft: Draft, over?: number): Promise<boolean> => {
    setUndone(false);
    if (!(await put(bodyOf(specs, draft), over ?? versionOf(base)))) return false;
    setBefore(bodyOf(specs, draftOf(specs, base)));
    return true;
  };
  const undo = async (to: Thing): Promise<void> => {
    if (!(await put(to, versionOf(base)))) return;
    setBefore(null);
    setUndone(true);
  };
  return (
    <>
      {undone && <Note kind="saved">{say.undone}</Note>}
      {before !== null && <UndoStrip undo={() => void undo(before)}>{say.changed}</UndoStrip>}
      <ThingForm
        key={versionOf(base)}
        specs={specs}
        first={base}
        submit={submit}
        send={send}
        pending={telling.pending}
        error={telling.error}
      />
    </>
  );
}

const versionOf = (thing: Thing): number => thing['version'] as number;
