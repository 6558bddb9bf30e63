import type { ComponentChildren } from 'preact';
import type { AskError } from '../ask/ask-error.js';
import { common } from '../words/common.js';
import { Button } from './button.js';
import { tellClock } from './tell-instant.js';

/** What was done or has to be known: read out when it appears. `error` interrupts, the others wait their turn. */
export function Note({
  kind = 'plain',
  children,
}: {
  kind?: 'plain' | 'error' | 'offline' | 'saved';
  children: ComponentChildren;
}) {
  return (
    <div class={`note ${kind}`} role={kind === 'error' ? 'alert' : 'status'}>
      {children}
    </div>
  );
}

/** Nothing is here yet: what it will hold, and how to begin. */
export function Empty({ children }: { children: ComponentChildren }) {
  return <div class="empty">{children}</div>;
}

export function Loading({ what = common.loading }: { what?: string }) {
  return (
    <p class="loading" role="status">
      {what}
    </p>
  );
}

/** Why something failed, each fault with its place, and the way to try again. */
export function ErrorState({ error, again }: { error: AskError; again?: () => void }) {
  const { errors, instance, title } = error.problem;
  return (
    <Note kind="error">
      <p>
        <strong>{common.trouble[error.trouble]}</strong>
      </p>
      {error.trouble === 'refused' && <p>{title}</p>}
      {errors.length > 0 && (
        <ul class="faults">
          {errors.map(({ pointer, detail }) => (
            <li key={`${pointer} ${detail}`}>
              {pointer !== '' && <code>{pointer}</code>} {detail}
            </li>
          ))}
        </ul>
      )}
      {instance !== undefined && <p class="quiet">{common.failureNumber(instance)}</p>}
      {again !== undefined && <Button onPress={again}>{common.again}</Button>}
    </Note>
  );
}

/** That a page shows what the device kept, since there is no signal. */
export function KeptNote({ keptAt }: { keptAt: string | null }) {
  if (keptAt === null) return null;
  return <Note kind="offline">{common.kept(tellClock(keptAt))}</Note>;
}

/** What was just done, with the way back. */
export function UndoStrip({ children, undo }: { children: ComponentChildren; undo: () => void }) {
  return (
    <div class="undo" role="status">
      <span>{children}</span>
      <Button look="plain" onPress={undo}>
        {common.undo}
      </Button>
    </div>
  );
}
