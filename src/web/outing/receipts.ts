import { useEffect } from 'preact/hooks';
import { Store, useStore } from '../app/store.js';
import { keepAnswer, keptAnswer } from '../device/kept-answers.js';
import { session } from '../session/session-state.js';

/** What this device was told of what it began, by id: it may not read it, and goes on with that without signal. */
const receipts = new Store<ReadonlyMap<string, object>>(new Map());

const addressOf = (id: string): string => `receipt:${id}`;

let person = session.value.me?.accountId;

// Whoever was told it has left: the disk is emptied then, and so is this.
session.watch(() => {
  const now = session.value.me?.accountId;
  if (person !== undefined && person !== now) receipts.set(new Map());
  person = now;
});

/** Keeps the latest receipt of a search or a count. */
export async function noteReceipt(receipt: { readonly id: string }): Promise<void> {
  receipts.set(new Map(receipts.value).set(receipt.id, receipt));
  await keepAnswer(addressOf(receipt.id), receipt);
}

/** The latest receipt of an id; undefined where this device has none. */
export function useReceipt<Receipt extends object>(id: string | undefined): Receipt | undefined {
  const known = useStore(receipts);
  useEffect(() => {
    if (id === undefined || known.has(id)) return;
    void keptAnswer<Receipt>(addressOf(id)).then((kept) => {
      if (kept !== undefined) receipts.set(new Map(receipts.value).set(id, kept.answer));
    });
  }, [id, known]);
  return id === undefined ? undefined : (known.get(id) as Receipt | undefined);
}
