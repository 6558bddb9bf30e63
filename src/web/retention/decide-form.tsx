import { useRef, useState } from 'preact/hooks';
import type { RetentionLine } from '../../../shared/retention/retention-line.js';
import { useAsk } from '../ask/use-ask.js';
import { useTell } from '../ask/use-tell.js';
import { ConfirmDialog } from '../lists/confirm-dialog.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState, Note } from '../look/notes.js';
import { tellInstant } from '../look/tell-instant.js';
import { retention } from '../words/en/retention.js';
import type { Kind } from './retention-answer.js';

const say = retention.decide;
const FIELDS = ['/reason', '/keepUntil', '/counsel', '/directedOn'];

interface DecideProps {
  readonly decision: 'delete' | 'keep';
  readonly name: string;
  readonly line: RetentionLine;
  readonly kind: Kind;
  readonly onDone: (words: string) => void;
  readonly again: () => void;
}

/** One decision: a deletion shows what goes and what stays, and is asked for twice. */
export function DecideForm({ decision, name, line, kind, onDone, again }: DecideProps) {
  const { tell, pending, error } = useTell();
  const [key] = useState<string>(() => crypto.randomUUID());
  const [reason, setReason] = useState('');
  const [until, setUntil] = useState('');
  const [counsel, setCounsel] = useState('');
  const [directedOn, setDirectedOn] = useState('');
  const [asking, setAsking] = useState(false);
  const trouble = useRef<HTMLDivElement>(null);
  const isDeletion = decision === 'delete';
  const directed = isDeletion && kind.counsel === true && (line.holds['privileged'] ?? 0) > 0;
  const send = async (): Promise<void> => {
    setAsking(false);
    const of = line.incidentId === null ? { month: line.month } : { incident: line.incidentId };
    const told = { keepUntil: until, counsel: counsel.trim(), directedOn };
    const filled = Object.fromEntries(Object.entries(told).filter(([, value]) => value !== ''));
    const body = { kind: line.kind, ...of, decision, reason: reason.trim(), ...filled };
    const asked = { method: 'POST', body, version: line.version, key } as const;
    if ((await tell('/api/retention/decisions', asked, ['/api/retention'])) === undefined)
      trouble.current?.focus();
    else onDone(isDeletion ? say.deleted(name) : say.keptLonger(name));
  };
  const isNamed =
    error !== null &&
    error.errors.length > 0 &&
    error.errors.every(({ pointer }) => FIELDS.includes(pointer));
  const hasChanged = error?.trouble === 'changed-meanwhile';
  return (
    <form
      class="form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (pending) return;
        if (isDeletion) setAsking(true);
        else void send();
      }}
    >
      {isDeletion && <WhatGoes kind={kind} />}
      {!isDeletion && (
        <Field
          label={say.until}
          type="date"
          value={until}
          onInput={setUntil}
          error={error?.faultAt('/keepUntil')}
        />
      )}
      {directed && (
        <>
          <Field
            label={say.counsel}
            hint={say.counselHint}
            value={counsel}
            onInput={setCounsel}
            error={error?.faultAt('/counsel')}
          />
          <Field
            label={say.directedOn}
            type="date"
            value={directedOn}
            onInput={setDirectedOn}
            error={error?.faultAt('/directedOn')}
          />
        </>
      )}
      <Field
        label={say.reason}
        hint={say.reasonHint}
        rows={2}
        value={reason}
        onInput={setReason}
        error={error?.faultAt('/reason')}
      />
      <div ref={trouble} tabIndex={-1}>
        {hasChanged && (
          <Note kind="error">
            <p>{say.changed}</p>
            <Button onPress={again}>{say.readAgain}</Button>
          </Note>
        )}
        {error !== null &&
          !hasChanged &&
          (isNamed ? <Note kind="error">{say.look}</Note> : <ErrorState error={error} />)}
      </div>
      <Button type="submit" look="main" busy={pending}>
        {isDeletion ? say.delete : say.keep}
      </Button>
      {asking && (
        <ConfirmDialog
          title={say.sure(name)}
          text={say.sureText}
          yes={say.yes}
          onYes={() => void send()}
          onNo={() => setAsking(false)}
        />
      )}
    </form>
  );
}

/** What a deletion takes and leaves, and where copies may be. */
function WhatGoes({ kind }: { kind: Kind }) {
  const { data } = useAsk<{ items: readonly { madeAt: string }[] }>('/api/backups');
  const latest = data?.items[0];
  return (
    <>
      <h4>{say.goes}</h4>
      <ul>
        {kind.goes.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      <h4>{say.stays}</h4>
      <ul>
        {kind.stays.map((one) => (
          <li key={one}>{one}</li>
        ))}
        <li>
          {say.backups} {latest === undefined ? say.noCopy : say.lastCopy(tellInstant(latest.madeAt))}
        </li>
        <li>{say.phones}</li>
      </ul>
    </>
  );
}
