import { Store } from '../app/store.js';
import { drop, find, findAll, keep } from '../device/sealed-store.js';
import type { CallDraft } from './call-draft.js';

const DAY_MS = 86_400_000;

/** The calls that this device holds, the latest first. */
export const calls = new Store<readonly CallDraft[]>([]);

/** Whether what was touched last is on the disk; a device that keeps nothing says so. */
export const kept = new Store<boolean>(true);

/** Reads what is on the disk. */
export function readCalls(): Promise<readonly CallDraft[]> {
  return inTurn(async () => {
    const found = await findAll<CallDraft>('calls');
    const latestFirst = [...found].sort((a, b) => b.taken.at.localeCompare(a.taken.at));
    calls.set(latestFirst);
    return latestFirst;
  });
}

/**
 * Changes a call, and has it on the disk when this returns.
 * @param begin what the call is at its first touch; without it a call that is not there stays away, and null comes back
 */
export function changeCall(id: string, change: (draft: CallDraft) => CallDraft): Promise<CallDraft | null>;
export function changeCall(
  id: string,
  change: (draft: CallDraft) => CallDraft,
  begin: () => CallDraft,
): Promise<CallDraft>;
export function changeCall(
  id: string,
  change: (draft: CallDraft) => CallDraft,
  begin?: () => CallDraft,
): Promise<CallDraft | null> {
  return inTurn(async () => {
    const draft = (await find<CallDraft>('calls', id).catch(() => inMemory(id))) ?? begin?.();
    return draft === undefined ? null : keepCall(change(draft));
  });
}

/** Where the device keeps nothing, a call lives as long as the page. */
const inMemory = (id: string): CallDraft | undefined => calls.value.find((one) => one.id === id);

let turn: Promise<unknown> = Promise.resolve();

/** One after another, over all tabs: what was read is what is changed, and nothing older is shown after something newer. */
function inTurn<Result>(work: () => Promise<Result>): Promise<Result> {
  const locked = (): Promise<Result> =>
    'locks' in navigator ? navigator.locks.request('desk-calls', work) : work();
  const next = turn.then(locked);
  turn = next.catch(() => undefined);
  return next;
}

async function keepCall(draft: CallDraft): Promise<CallDraft> {
  // Shown at once: the disk may be slow, and the person must not press twice.
  calls.set([draft, ...calls.value.filter(({ id }) => id !== draft.id)]);
  try {
    await keep('calls', draft.id, draft);
    kept.set(true);
  } catch (error) {
    console.warn('The call could not be kept on this device.', error);
    kept.set(false);
  }
  return draft;
}

/** Takes calls off the device that are a day old and have arrived whole: they are in the record. */
export async function dropOldCalls(hasArrived: (draft: CallDraft) => boolean): Promise<void> {
  for (const draft of calls.value) {
    if (Date.now() - Date.parse(draft.taken.at) < DAY_MS || !hasArrived(draft)) continue;
    await drop('calls', draft.id);
  }
  await readCalls();
}
