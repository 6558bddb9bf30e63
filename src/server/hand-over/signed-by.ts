import type { SignedBy } from '../../../shared/decision/decision.js';
import type { PersonActor } from '../accounts/accounts.api.js';

/** Who does it, by the name that they have now. */
export function signedBy({ accountId, personName, role }: PersonActor): SignedBy {
  return { account: accountId, person: personName, role };
}
