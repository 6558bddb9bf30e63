import { Store, useStore } from '../app/store.js';
import { pickedPerson } from '../session/picked-person.js';
import { session } from '../session/session-state.js';
import { drop, find, findAll, keep, keepBytes } from './sealed-store.js';
import type { QueuedFile, QueuedItem, QueuedRequest } from './outbox-item.js';

/** What is only on this device, oldest first. */
export const outbox = new Store<readonly QueuedItem[]>([]);

/** Called whenever something was queued: whoever sends begins. */
const knocks = new Set<() => void>();
const otherTabs = new BroadcastChannel('desk-outbox');
otherTabs.addEventListener('message', () => void readOutbox());

type NewRequest = Pick<QueuedRequest, 'line' | 'about' | 'method' | 'path'> &
  Partial<Pick<QueuedRequest, 'body' | 'version' | 'key' | 'opens'>>;

/**
 * Queues a change. It is on the disk when this returns, and is sent in its turn, once, also after the browser was
 * killed. A later PUT to the same address takes the place of one that still waits; one made while the earlier is on its
 * way is made on the version that comes of that.
 * @example await queueRequest({ line: id, about: 'Call', method: 'POST', path: '/api/incidents', body: { id, call }, opens: true })
 */
export async function queueRequest(request: NewRequest): Promise<QueuedRequest> {
  return inTurn(async (items) => {
    const earlier = request.method === 'PUT' ? items.findLast((item) => isSamePut(item, request)) : undefined;
    if (earlier?.state === 'waiting') {
      return save({ ...earlier, about: request.about, body: request.body });
    }
    return save({
      ...envelope(items, request.key),
      ...request,
      kind: 'request',
      ...(earlier?.state === 'sending' && { follows: earlier.id }),
    });
  });
}

/** Queues a file for the evidence of an incident; its bytes are sealed on the device until they have arrived. */
export async function queueFile(
  incident: string,
  file: Blob & { name?: string },
  about: string,
  words?: object,
): Promise<QueuedFile> {
  const bytes = await file.arrayBuffer();
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  const sha256 = [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return inTurn(async (items) => {
    const shared = envelope(items);
    await keepBytes('files', shared.id, bytes);
    const name = file.name ?? 'photograph';
    const said = words !== undefined && { words };
    return save({
      ...shared,
      ...said,
      kind: 'file',
      line: incident,
      about,
      incident,
      name,
      size: file.size,
      sha256,
    });
  });
}

/** Takes something back that was not sent: a conflict that the person settled, or what the service refused. */
export async function dropQueued(id: string): Promise<void> {
  await navigator.locks.request('desk-outbox', () => drop('outbox', id));
  await drop('files', id);
  await readOutbox();
  otherTabs.postMessage('changed');
}

/**
 * Changes what is queued, as it stands on the disk by then. Undefined where it was taken back meanwhile: it stays gone, as
 * whoever sends it holds an older copy.
 */
export async function changeQueued<Item extends QueuedItem>(
  { id }: Item,
  change: (stands: Item) => Item,
): Promise<Item | undefined> {
  const changed = await navigator.locks.request('desk-outbox', async () => {
    const stands = await find<Item>('outbox', id);
    return stands && save(change(stands));
  });
  await readOutbox();
  return changed;
}

/** Sends again what was refused or in conflict, in the words that the person settled on. */
export async function requeue(
  item: QueuedItem,
  change: { body?: unknown; version?: number } = {},
): Promise<void> {
  const { problem, ...rest } = item;
  void problem;
  await save({ ...rest, ...change, state: 'waiting' });
  await readOutbox();
  for (const knock of knocks) knock();
}

/** What waits of one line, such as an incident: `useOutbox(id)`; everything without one. */
export function useOutbox(line?: string): readonly QueuedItem[] {
  const items = useStore(outbox);
  return line === undefined ? items : items.filter((item) => item.line === line);
}

/** Reads what is on the disk; other tabs may have queued or sent. */
export async function readOutbox(): Promise<readonly QueuedItem[]> {
  const items = await findAll<QueuedItem>('outbox');
  outbox.set(items);
  return items;
}

/** Keeps how far an item has come. */
export async function save<Item extends QueuedItem>(item: Item): Promise<Item> {
  await keep('outbox', item.id, item);
  return item;
}

export function onKnock(knock: () => void): void {
  knocks.add(knock);
}

/** One at a time over all tabs, so that the order of ids is the order of queueing. */
async function inTurn<Item>(work: (items: readonly QueuedItem[]) => Promise<Item>): Promise<Item> {
  const item = await navigator.locks.request('desk-outbox', async () => work(await readOutbox()));
  await readOutbox();
  otherTabs.postMessage('changed');
  for (const knock of knocks) knock();
  return item;
}

function envelope(items: readonly QueuedItem[], key = crypto.randomUUID() as string) {
  const last = Number(items.at(-1)?.id ?? 0);
  return {
    // Ids are read back in order; the clock of a phone may jump, so it does not make them.
    id: String(last + 1).padStart(12, '0'),
    by: writerNow(),
    queuedAt: new Date().toISOString(),
    key,
    state: 'waiting' as const,
  };
}

/** Of the same person: on a shared device nobody's words go out under another's name. */
function isSamePut(item: QueuedItem, { method, path }: NewRequest): item is QueuedRequest {
  return item.kind === 'request' && item.method === method && item.path === path && item.by === writerNow();
}

/** Account in whose name something is queued just now; null on an enrolled device where no name was picked. */
export function writerNow(): string | null {
  return session.value.me?.accountId ?? pickedPerson.value?.accountId ?? null;
}
