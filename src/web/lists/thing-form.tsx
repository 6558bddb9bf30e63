import { useRef, useState } from 'preact/hooks';
import type { AskError } from '../ask/ask-error.js';
import { Button } from '../look/button.js';
import { ErrorState, Note } from '../look/notes.js';
import { lists as say } from '../words/lists.js';
import { BothVersions } from './both-versions.js';
import { ConfirmDialog, type Confirm } from './confirm-dialog.js';
import { draftOf } from './draft.js';
import type { Draft, FieldSpec, Thing } from './field-spec.js';
import { inWords, SpecFields } from './spec-fields.js';
import './lists.css';

export interface ThingFormProps {
  readonly specs: readonly FieldSpec[];
  /** What stands in the fields at first: the thing that is changed, or nothing. */
  readonly first?: Thing;
  readonly lead?: string;
  readonly submit: string;
  /** Sends it, on the version that somebody else's change left, where there was one. True once it is there. */
  readonly send: (draft: Draft, over?: number) => Promise<boolean>;
  readonly pending: boolean;
  readonly error: AskError | null;
  /** Asked before it is sent, where it cannot be undone. */
  readonly confirm?: Confirm;
  /** Keeps it on the device, where it may also go without signal. */
  readonly keepHere?: (draft: Draft) => Promise<void>;
}

/** A form made of specs: what was refused is marked at its field, and nothing that was typed is lost. */
export function ThingForm(props: ThingFormProps) {
  const { specs, first = {}, lead, submit, send, pending, error, confirm, keepHere } = props;
  const [draft, setDraft] = useState(() => draftOf(specs, first));
  const [asking, setAsking] = useState(false);
  const [kept, setKept] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const go = async (over?: number): Promise<void> => {
    setAsking(false);
    setKept(false);
    if (await send(draft, over)) setDraft(draftOf(specs, first));
    else form.current?.querySelector<HTMLElement>('.thing-trouble')?.focus();
  };
  const keep = async (): Promise<void> => {
    await keepHere?.(draft);
    setDraft(draftOf(specs, first));
    setKept(true);
  };
  const current = error?.trouble === 'changed-meanwhile' ? (error.problem.current as Thing) : null;
  return (
    <form
      class="form"
      ref={form}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (pending) return;
        if (confirm === undefined) void go();
        else setAsking(true);
      }}
    >
      {lead !== undefined && <p class="quiet">{lead}</p>}
      <SpecFields
        specs={specs}
        draft={draft}
        onChange={setDraft}
        faultAt={(at) => error?.faultAt(at) ?? null}
      />
      <div class="thing-trouble" tabIndex={-1}>
        {kept && <Note kind="saved">{say.keptHere}</Note>}
        {current !== null && (
          <BothVersions
            specs={specs}
            draft={draft}
            current={current}
            takeTheirs={() => setDraft(draftOf(specs, current))}
            sendMine={() => void go(current['version'] as number)}
          />
        )}
        {error !== null && current === null && !kept && <Faults error={error} specs={specs} />}
        {error?.trouble === 'unreachable' && keepHere !== undefined && !kept && (
          <Note kind="offline">
            <p>{say.noSignal}</p>
            <Button onPress={() => void keep()}>{say.keepHere}</Button>
          </Note>
        )}
      </div>
      <Button type="submit" look="main" busy={pending}>
        {submit}
      </Button>
      {asking && confirm !== undefined && (
        <ConfirmDialog {...confirm} onYes={() => void go()} onNo={() => setAsking(false)} />
      )}
    </form>
  );
}

/** Each fault by the name of its field, where the fields are all of this form; everything else is told in full. */
function Faults({ error, specs }: { error: AskError; specs: readonly FieldSpec[] }) {
  const told = error.errors.map(({ pointer, detail }) => {
    const spec = specs.find(({ name }) => pointer.split('/')[1] === name);
    return spec && { pointer, words: `${spec.label}: ${inWords(spec, detail)}` };
  });
  const named = told.filter((fault) => fault !== undefined);
  if (error.trouble !== 'refused' || named.length === 0 || named.length < told.length)
    return <ErrorState error={error} />;
  return (
    <Note kind="error">
      <p>
        <strong>{say.look}</strong>
      </p>
      <ul class="faults">
        {named.map(({ pointer, words }) => (
          <li key={pointer}>{words}</li>
        ))}
      </ul>
    </Note>
  );
}
