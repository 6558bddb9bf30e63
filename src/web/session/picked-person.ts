import { Store, useStore } from '../app/store.js';
import { drop, find, keep } from '../device/sealed-store.js';
import { dayIn } from '../look/tell-instant.js';

/** Whose name was picked on an enrolled device: what is entered stands under it, to be confirmed by their PIN. */
export interface PickedPerson {
  readonly accountId: string;
  readonly personName: string;
  /** From when on the entries are theirs and not confirmed yet (RFC 3339). */
  readonly since: string;
  /** When they last confirmed; null before the first time. */
  readonly confirmedAt: string | null;
}

const KEPT_AS = 'picked';

export const pickedPerson = new Store<PickedPerson | null>(null);

export function usePickedPerson(): PickedPerson | null {
  return useStore(pickedPerson);
}

/** Picks somebody, or nobody with null; it is on the disk when it is shown, so that a browser that is killed then has it. */
export async function pickPerson(picked: PickedPerson | null): Promise<void> {
  try {
    await (picked === null ? drop('self', KEPT_AS) : keep('self', KEPT_AS, picked));
  } catch (error) {
    console.warn('This device cannot remember whose name was picked.', error);
  }
  pickedPerson.set(picked);
}

/** Takes up who was picked before; a name of yesterday is not picked today, as another may hold the phone. */
export async function takeUpPicked(): Promise<void> {
  try {
    const kept = await find<PickedPerson>('self', KEPT_AS);
    const isOfToday = kept !== undefined && dayIn(undefined, Date.parse(kept.since)) === dayIn();
    pickedPerson.set(isOfToday ? kept : null);
  } catch (error) {
    console.warn('This device keeps nothing.', error);
  }
}
