import type { PacketCheck } from '../../../shared/hand-over/verify-packet.js';

/**
 * Looks at the time stamps of a packet, with what that needs fetched only then.
 * @param roots certificates that whoever checks trusts, in DER
 */
export async function lookAtStamps(check: PacketCheck, roots: readonly Uint8Array[]): Promise<PacketCheck> {
  // A page without HTTPS has no cryptography; what was not looked at is then said to be so.
  if (check.stamps.length === 0 || !isSecureContext) return check;
  const { checkTimeStamps } = await import('../../../shared/hand-over/check-time-stamps.js');
  return checkTimeStamps(check, { crypto, roots });
}
