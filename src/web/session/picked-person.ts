import { Store, useStore } from '../app/store.js';

/** Whose name was picked on an enrolled device: what is entered stands under it, to be confirmed by their PIN. */
export interface PickedPerson {
  readonly accountId: string;
  readonly personName: string;
  /** From when on the entries are theirs and not confirmed yet (RFC 3339). */
  readonly since: string;
  /** When they last confirmed; null before the first time. */
  readonly confirmedAt: string | null;
}

export const pickedPerson = new Store<PickedPerson | null>(null);

export function usePickedPerson(): PickedPerson | null {
  return useStore(pickedPerson);
}
