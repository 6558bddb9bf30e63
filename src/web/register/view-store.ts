import { find, keep } from '../device/sealed-store.js';
import type { RegisterQuery } from './register-query.js';

/** A search under a name. */
export interface View {
  readonly name: string;
  readonly query: RegisterQuery;
}

const keptAs = (account: string): string => `register-views ${account}`;

/** The views of a person on this device, in the order in which they were saved. Throws where it keeps nothing. */
export async function readViews(account: string): Promise<readonly View[]> {
  return (await find<readonly View[]>('self', keptAs(account))) ?? [];
}

export async function keepViews(account: string, views: readonly View[]): Promise<void> {
  await keep('self', keptAs(account), views);
}
