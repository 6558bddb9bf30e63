import type { Actor } from '../accounts/accounts.api.js';
import type { ByRow } from './database/by.row.js';

/** Who and on which device, as it is written beside everything that is added. */
export function byOf(actor: Actor, recordedAt: string): ByRow {
  return {
    person: actor.personName,
    accountId: actor.accountId ?? null,
    role: actor.kind === 'person' ? actor.role : null,
    device: actor.deviceName ?? null,
    deviceId: actor.deviceId ?? null,
    recordedAt,
  };
}

/** The same as it is shown again. */
export function shownBy({ person, accountId, role, device, deviceId, recordedAt }: ByRow): ByRow {
  return { person, accountId, role, device, deviceId, recordedAt };
}
