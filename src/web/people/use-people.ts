import { useAskAll } from '../ask/use-ask-all.js';
import type { SpecOption } from '../lists/field-spec.js';
import type { Account } from './account.js';

/** Everybody with an open account, to choose from; only managers and administrators are given them. */
export function usePeople(manages: boolean): readonly SpecOption[] {
  const { data = [] } = useAskAll<Account>(manages ? '/api/accounts' : null);
  return data.filter(({ active }) => active).map(({ id, name }) => ({ value: id, label: name }));
}
