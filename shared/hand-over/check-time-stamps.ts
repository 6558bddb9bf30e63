import { headText } from '../proof/merkle-log.js';
import { type StampTools, verifyTimeStamp } from '../proof/verify-time-stamp.js';
import type { PacketCheck, SeenStamp } from './verify-packet.js';

/**
 * Looks at the time stamps of a packet that was held against itself, each against the head that it is to be of.
 * @param tools with the certificates that whoever checks trusts: a stamp must lead to one of them, where there are any
 */
export async function checkTimeStamps(check: PacketCheck, tools: StampTools): Promise<PacketCheck> {
  const stamps: SeenStamp[] = [];
  const faults = [...check.faults];
  for (const { head, token } of check.packet?.proof.stamped ?? []) {
    const found = await verifyTimeStamp(token, headText(head), tools);
    const about = `The time stamp of the head at ${head.size} amendments does not count`;
    if (!found.ok) faults.push(`${about}: ${found.problem}`);
    else if (found.stamp.trusted === false)
      faults.push(`${about}: the certificate of ${found.stamp.authority} leads to none that you gave.`);
    else stamps.push({ head, stamp: found.stamp });
  }
  return { ...check, faults, stamps };
}
