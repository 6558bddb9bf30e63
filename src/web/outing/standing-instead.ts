import { useEffect } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import { Store, useStore } from '../app/store.js';
import { dropQueued, readOutbox, save } from '../device/outbox.js';
import type { QueuedItem } from '../device/outbox-item.js';
import { onNotTaken } from '../device/send-outbox.js';
import { noteReceipt } from './receipts.js';

/** What was begun here without signal, and the one that somebody had begun before it. */
const instead = new Store<ReadonlyMap<string, string>>(new Map());

const OPENINGS: readonly string[] = ['/api/not-back', '/api/closing-counts'];

/**
 * Where somebody had begun the same search or count before this device could say so, what waits for ours goes to theirs:
 * a time that was stamped is never lost to who was first.
 */
async function goOnWithTheirs(item: QueuedItem): Promise<boolean> {
  if (item.kind !== 'request' || item.opens !== true || !OPENINGS.includes(item.path)) return false;
  const items = await readOutbox();
  const refused = items.find(({ id }) => id === item.id);
  const theirs = refused?.problem?.current as { id?: string } | undefined;
  if (theirs?.id === undefined) return false;
  const { id } = theirs;
  for (const other of items) {
    if (other.kind !== 'request' || other.line !== item.line || other.id === item.id) continue;
    await save({ ...other, line: id, path: other.path.replace(item.line, id) });
  }
  await noteReceipt({ ...theirs, id });
  await dropQueued(item.id);
  instead.set(new Map(instead.value).set(item.line, id));
  return true;
}

onNotTaken(goOnWithTheirs);

/** Leads to the one that stands, where this page shows one that was begun here in vain. */
export function useStandingInstead(id: string, addressOf: (id: string) => string): void {
  const standing = useStore(instead).get(id);
  const [, go] = useLocation();
  useEffect(() => {
    if (standing !== undefined) go(addressOf(standing), { replace: true });
  }, [standing]);
}
