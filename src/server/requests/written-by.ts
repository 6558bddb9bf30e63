import type { WrittenBy } from '../../../shared/record/legal-request.js';
import type { Actor } from '../accounts/accounts.api.js';

/** Who does it, by the name that they have now. */
export function writtenBy(actor: Actor): WrittenBy {
  return {
    person: actor.personName,
    account: actor.accountId ?? null,
    role: actor.kind === 'person' ? actor.role : null,
    device: actor.deviceName ?? null,
  };
}
