import { useEffect } from 'preact/hooks';
import { Store } from '../app/store.js';
import { askAgain } from '../ask/use-ask.js';
import { changeQueued, dropQueued, outbox, queueRequest } from '../device/outbox.js';
import type { QueuedItem, QueuedRequest } from '../device/outbox-item.js';
import { onSent } from '../device/send-outbox.js';
import { nowByService } from '../look/use-now.js';
import { outAndBack as inLog } from '../words/en/out-and-back.js';
import { outAndBack as say } from '../words/out-and-back.js';
import { noteReceipt } from './receipts.js';
import type { Outing } from './service-answers.js';

/** The line of the outbox in which craft go out and come back. */
export const OUTING_LINE = 'outing';

/** A craft that was marked back on this device, while that can be taken back with one press. */
export interface Marked {
  readonly unit: string;
  readonly at: string;
  readonly itemId: string;
  readonly outingId: string | null;
}

/** The latest press, for the strip that takes it back. */
export const marked = new Store<Marked | null>(null);

const backPath = (unit: string): string => `/api/outings/units/${encodeURIComponent(unit)}/back`;

/** Says which craft a queued request marks back; null for others, and for one that was taken back on its way. */
export function unitOfBack(item: QueuedItem): { unit: string; at: string } | null {
  if (item.kind !== 'request' || item.line !== OUTING_LINE || item.andThen !== undefined) return null;
  const unit = /^\/api\/outings\/units\/([^/]+)\/back$/.exec(item.path)?.[1];
  if (unit === undefined) return null;
  const { at = item.queuedAt } = (item.body ?? {}) as { at?: string };
  return { unit: decodeURIComponent(unit), at };
}

/** Marks a craft back at this moment; it is on the disk when this returns. */
export async function markBack(unit: string): Promise<void> {
  const at = new Date(nowByService()).toISOString();
  const { id } = await queueRequest({
    line: OUTING_LINE,
    about: say.backAt(unit, at.slice(11, 16)),
    method: 'POST',
    path: backPath(unit),
    body: { at },
  });
  marked.set({ unit, at, itemId: id, outingId: null });
}

/** Takes the latest press back: what still waits is not sent, what has arrived is undone there. */
export async function undoBack({ unit, itemId, outingId }: Marked): Promise<void> {
  marked.set(null);
  if (outingId !== null) return queueUndoing(unit, outingId);
  const item = outbox.value.find(({ id }) => id === itemId);
  if (item?.kind !== 'request' || item.state !== 'sending') return dropQueued(itemId);
  await changeQueued(item, (stands) => ({ ...stands, andThen: undoing(unit, '{id}') }));
}

async function queueUndoing(unit: string, outingId: string): Promise<void> {
  await queueRequest({ line: OUTING_LINE, ...undoing(unit, outingId) });
}

const undoing = (unit: string, outingId: string) =>
  ({
    about: say.undoAbout(unit),
    method: 'POST',
    path: `/api/outings/${outingId}/undoing`,
    body: { why: inLog.undoWhy },
  }) as const;

async function noteArrival(item: QueuedItem, answer: unknown): Promise<void> {
  const back = unitOfBack(item);
  if (back !== null) {
    const { id: outingId } = answer as Outing;
    if (marked.value?.itemId === item.id) marked.set({ ...marked.value, outingId });
  }
  if (isOfOutings(item) && !item.path.startsWith('/api/outings')) await noteReceipt(answer as { id: string });
  // Before it leaves the outbox, so that the page never shows what was so before.
  if (isOfOutings(item))
    await Promise.all(['/api/outings', '/api/not-back', '/api/closing-counts'].map(askAgain));
}

const isOfOutings = (item: QueuedItem): item is QueuedRequest =>
  item.kind === 'request' && /^\/api\/(outings|not-back|closing-counts)/.test(item.path);

/** What was sent is heard of while one of the pages of out and back is open. */
export function useArrivals(): void {
  useEffect(() => onSent(noteArrival), []);
}
