import type { LogHead } from '../proof/merkle-log.js';
import type { Recipient } from './hand-over-profile.js';
import type { EarlierHead } from './packet.js';

/** A packet that was made before, with who is known to have received it. */
export interface EarlierPacket {
  readonly id: string;
  readonly recipient: Recipient;
  readonly name: string;
  readonly head: LogHead;
  readonly deliveries: readonly { readonly to: string; readonly at: string }[];
}

/** That a mail with the head of a packet left, and nobody knows whether it arrived. */
export interface EarlierMailing {
  readonly packet: string;
  readonly to: string;
  /** RFC 3339. */
  readonly at: string;
}

/** Those to whom it is told who else has a packet. */
const TOLD_ALL: readonly Recipient[] = ['counsel', 'in-house'];
const SOMEBODY = 'another recipient, whom the sender can name';

/**
 * The heads that left before, for the proof of a packet. Everybody learns that there are such; who has them is told to
 * counsel, in the house, and to whoever had that packet: that a lawyer or an insurer has one is itself something.
 */
export function earlierHeads(
  packets: readonly EarlierPacket[],
  mailings: readonly EarlierMailing[],
  reader: Pick<EarlierPacket, 'recipient' | 'name'>,
): EarlierHead[] {
  return packets.flatMap((packet): EarlierHead[] => {
    const { id, head, deliveries } = packet;
    const isTold =
      TOLD_ALL.includes(reader.recipient) ||
      (packet.recipient === reader.recipient && packet.name === reader.name);
    const nameOf = (to: string): string => (isTold ? to : SOMEBODY);
    const arrived = new Set(deliveries.map(({ to }) => to));
    return [
      ...deliveries.map(({ to, at }): EarlierHead => ({ head, by: nameOf(to), at, how: 'received' })),
      ...mailings
        .filter((one) => one.packet === id && !arrived.has(one.to))
        .map(({ to, at }): EarlierHead => ({ head, by: nameOf(to), at, how: 'mailed' })),
    ];
  });
}
