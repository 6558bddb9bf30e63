import { AskError } from '../ask/ask-error.js';
import { ask } from '../ask/ask.js';
import { askAgain } from '../ask/use-ask.js';
import { beginSession } from '../session/session.js';
import { session } from '../session/session-state.js';
import { changeQueued, dropQueued, onKnock, readOutbox } from './outbox.js';
import type { QueuedItem, QueuedRequest } from './outbox-item.js';
import { sendFile } from './send-file.js';

const TRY_AGAIN_MS = 15_000;

let unknownToService = false;

type Sent = (item: QueuedItem, answer: unknown) => void | Promise<void>;
const listeners = new Set<Sent>();

type NotTaken = (item: QueuedItem) => boolean | Promise<boolean>;
const refusalListeners = new Set<NotTaken>();

/** Called with each item that has arrived and what the service answered; gives the way to stop that. */
export function onSent(listener: Sent): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/**
 * Called with each item that the service refused or that somebody else's change stands against; who deals with it gives
 * true. Others stay in the outbox for a person to look at.
 */
export function onNotTaken(listener: NotTaken): void {
  refusalListeners.add(listener);
}

/** Begins to send what waits: now, when something is queued, when the signal comes back, and again while anything is left. */
export function beginSending(): void {
  const send = (): void => void sendOutbox();
  onKnock(send);
  session.watch(send);
  addEventListener('online', send);
  document.addEventListener('visibilitychange', () => document.hidden || send());
  setInterval(send, TRY_AGAIN_MS);
  send();
}

/** Sends what waits, one after the other, from one tab alone. Ends at the first that finds no service. */
export async function sendOutbox(): Promise<void> {
  await navigator.locks.request('desk-sending', { ifAvailable: true }, async (lock) => {
    if (lock === null) return;
    // Who is there was only remembered, or the service did not know us: what waits goes in nobody's wrong name.
    if (session.value.remembered || unknownToService) await beginSession();
    unknownToService = false;
    for (let item = nextOf(await readOutbox()); item !== undefined; item = nextOf(await readOutbox())) {
      if (!(await sendOne(item))) return;
    }
  });
}

/** The first that may go: not after an opening of its line that was refused, and not in another person's name. */
function nextOf(items: readonly QueuedItem[]): QueuedItem | undefined {
  const { me, device } = session.value;
  const shut = new Set(
    items
      .filter((item) => item.kind === 'request' && item.opens === true && item.state === 'refused')
      .map(({ line }) => line),
  );
  const first = items.find(
    ({ state, line, by }) =>
      (state === 'waiting' || state === 'sending') &&
      !shut.has(line) &&
      (by === null || by === me?.accountId || (me === null && device !== null)),
  );
  // What opens a line goes before all of it, in whatever order they were queued.
  return items.find((item) => item.line === first?.line && isWaitingOpening(item)) ?? first;
}

const isWaitingOpening = (item: QueuedItem): boolean =>
  item.kind === 'request' && item.opens === true && item.state !== 'refused' && item.state !== 'conflict';

/** Tells whether to go on with the next. */
async function sendOne(item: QueuedItem): Promise<boolean> {
  const sending = await changeQueued(item, (stands) => ({ ...stands, state: 'sending' }));
  if (sending === undefined) return true;
  try {
    await arrived(sending, sending.kind === 'file' ? await sendFile(sending) : await sendRequest(sending));
    return true;
  } catch (error) {
    if (!(error instanceof AskError)) throw error;
    const mayPass = ['unreachable', 'sign-in', 'busy', 'broken'].includes(error.trouble);
    if (!mayPass && wasTaken(sending, error)) {
      await arrived(sending, error.problem.current);
      return true;
    }
    unknownToService = error.trouble === 'sign-in';
    if (mayPass) await changeQueued(item, (stands) => ({ ...stands, state: 'waiting' }));
    else await notTaken(item, error);
    return !mayPass;
  }
}

function sendRequest({ method, path, body, version, key, by }: QueuedRequest): Promise<unknown> {
  return ask(path, {
    method,
    body,
    key,
    quiet: true,
    ...(version !== undefined && { version }),
    ...(by !== null && { headers: { 'desk-person': by } }),
  });
}

/** The answer to an earlier try was lost on the way: what stands there now is what is sent again. */
function wasTaken(item: QueuedItem, { problem }: AskError): boolean {
  if (item.kind !== 'request' || problem.status !== 412) return false;
  const { document: now } = (problem.current ?? {}) as { document?: unknown };
  const { document: ours } = (item.body ?? {}) as { document?: unknown };
  return ours !== undefined && JSON.stringify(now) === JSON.stringify(ours);
}

async function notTaken(item: QueuedItem, { trouble, problem }: AskError): Promise<void> {
  const state = trouble === 'changed-meanwhile' ? 'conflict' : 'refused';
  await changeQueued(item, (stands) => ({ ...stands, state, problem }));
  for (const listener of refusalListeners) if (await listener(item)) return;
}

/** Puts what follows in its place, before whatever was queued later; false where nothing does. */
async function goesOn(item: QueuedRequest, answer: unknown): Promise<boolean> {
  const { id = '' } = (answer ?? {}) as { id?: string };
  const next = await changeQueued(item, ({ andThen, ...stands }) =>
    andThen === undefined
      ? stands
      : {
          ...stands,
          ...andThen,
          path: andThen.path.replace('{id}', id),
          key: crypto.randomUUID(),
          state: 'waiting',
        },
  );
  return next?.state === 'waiting';
}

async function arrived(item: QueuedItem, answer: unknown): Promise<void> {
  const { version } = (answer ?? {}) as { version?: number };
  for (const later of await readOutbox()) {
    if (later.kind === 'request' && later.follows === item.id && version !== undefined)
      await changeQueued(later, (stands) => ({ ...stands, version }));
  }
  for (const listener of listeners) await listener(item, answer);
  if (item.kind === 'file' || !(await goesOn(item, answer))) await dropQueued(item.id);
  // What is of the same kind, such as `/api/craft`, and incidents, which much else adds to.
  const kind = item.kind === 'file' ? [] : [item.path.split('/').slice(0, 3).join('/')];
  await Promise.all(['/api/incidents', ...kind].map(askAgain));
}
