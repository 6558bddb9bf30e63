import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

const NAME = 'incident-desk';
/** Goes up with every new drawer. */
const LAYOUT = 2;
const KEY_ID = 'device';

/** What is kept on this device, by drawer: answers of the service, requests that wait, photographs, and what is being written. */
export type Drawer = 'answers' | 'outbox' | 'files' | 'calls' | 'drafts' | 'self';

interface Sealed {
  readonly iv: Uint8Array<ArrayBuffer>;
  readonly bytes: ArrayBuffer;
}

interface Shelves extends DBSchema {
  keys: { key: string; value: CryptoKey };
  answers: { key: string; value: Sealed };
  outbox: { key: string; value: Sealed };
  files: { key: string; value: Sealed };
  calls: { key: string; value: Sealed };
  drafts: { key: string; value: Sealed };
  self: { key: string; value: Sealed };
}

const DRAWERS: readonly Drawer[] = ['answers', 'outbox', 'files', 'calls', 'drafts', 'self'];

let opened: Promise<{ db: IDBPDatabase<Shelves>; key: CryptoKey }> | undefined;

/**
 * Everything is sealed with a key of this browser that no script can read out (AES-GCM, non-extractable): a copy of the
 * browser's files alone shows nothing, and when the key is gone so is what it sealed.
 */
function open() {
  opened ??= openSealed();
  return opened;
}

async function openSealed() {
  const db = await openDB<Shelves>(NAME, LAYOUT, {
    // What an older desk left on the device stays: only drawers that it did not have are added.
    upgrade: (found) => {
      for (const drawer of ['keys', ...DRAWERS] as const) {
        if (!found.objectStoreNames.contains(drawer)) found.createObjectStore(drawer);
      }
    },
    // A newer desk in another window adds a drawer: this one lets go, and opens anew at its next touch.
    blocking: () => {
      opened = undefined;
      db.close();
    },
  });
  const made = await crypto.subtle.generateKey({ name: 'AES-GCM', length: 256 }, false, [
    'encrypt',
    'decrypt',
  ]);
  // Two pages that open at the same time must end with one key: the first that is written counts.
  const turn = db.transaction('keys', 'readwrite');
  const key = (await turn.store.get(KEY_ID)) ?? made;
  if (key === made) await turn.store.put(made, KEY_ID);
  await turn.done;
  return { db, key };
}

/** Keeps bytes. It is on the disk when this returns: a browser that is killed then has it. */
export async function keepBytes(drawer: Drawer, id: string, bytes: BufferSource): Promise<void> {
  const { db, key } = await open();
  const iv = crypto.getRandomValues(new Uint8Array(12));
  const sealed = { iv, bytes: await crypto.subtle.encrypt({ name: 'AES-GCM', iv }, key, bytes) };
  const turn = db.transaction(drawer, 'readwrite', { durability: 'strict' });
  await turn.store.put(sealed, id);
  await turn.done;
}

/** Keeps a value that JSON can hold. */
export async function keep(drawer: Drawer, id: string, value: unknown): Promise<void> {
  await keepBytes(drawer, id, new TextEncoder().encode(JSON.stringify(value)));
}

export async function findBytes(drawer: Drawer, id: string): Promise<ArrayBuffer | undefined> {
  const { db, key } = await open();
  const sealed = await db.get(drawer, id);
  return sealed && crypto.subtle.decrypt({ name: 'AES-GCM', iv: sealed.iv }, key, sealed.bytes);
}

export async function find<Value>(drawer: Drawer, id: string): Promise<Value | undefined> {
  const bytes = await findBytes(drawer, id);
  return bytes === undefined ? undefined : (JSON.parse(new TextDecoder().decode(bytes)) as Value);
}

/** Everything in a drawer, in the order of its ids. */
export async function findAll<Value>(drawer: Drawer): Promise<Value[]> {
  const { db } = await open();
  const ids = await db.getAllKeys(drawer);
  const found = await Promise.all(ids.map((id) => find<Value>(drawer, id)));
  return found.filter((value) => value !== undefined);
}

export async function drop(drawer: Drawer, id: string): Promise<void> {
  const { db } = await open();
  await db.delete(drawer, id);
}

export async function empty(drawer: Drawer): Promise<void> {
  const { db } = await open();
  await db.clear(drawer);
}

/** Takes everything off this device, the key included. */
export async function wipe(): Promise<void> {
  const { db } = await open();
  const turn = db.transaction(['keys', ...DRAWERS], 'readwrite', { durability: 'strict' });
  await Promise.all([
    turn.objectStore('keys').clear(),
    ...DRAWERS.map((drawer) => turn.objectStore(drawer).clear()),
  ]);
  await turn.done;
  opened = undefined;
}
