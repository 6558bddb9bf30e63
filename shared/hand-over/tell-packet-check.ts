import { localTime } from '../time/tell-time.js';
import { NOT_IN_THE_LOG } from './compare-with-proof.js';
import type { ReceivedHead } from './packet.js';
import type { PacketCheck } from './verify-packet.js';

/**
 * What a check found, in words that a claims handler understands and that claim no more than it shows.
 * @param heads how many heads of their own whoever checks it held it against
 */
export function tellPacketCheck(check: PacketCheck, heads: number): string[] {
  return linesOf(check, heads).map(plainly);
}

/** Names in a packet are a stranger's: what would move or colour a terminal, or turn a line around, is written out. */
function plainly(line: string): string {
  return line.replaceAll(
    /[\p{Cc}\p{Zl}\p{Zp}\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

function linesOf({ faults, packet, proven, masked }: PacketCheck, heads: number): string[] {
  if (packet === null) return [...faults, 'Nothing can be said of this packet.'];
  const { manifest, proof, record } = packet;
  const { reference, recipient, madeAt, madeBy, head, files } = manifest;
  const about = `Incident ${reference}, made for ${recipient.name} on ${tellUtc(madeAt)} by ${madeBy}.`;
  if (faults.length > 0) {
    const count = faults.length === 1 ? 'One thing is' : `${faults.length} things are`;
    return [
      about,
      ...faults,
      `${count} not as the packet says. Do not rely on it; ask the sender for a new one.`,
    ];
  }
  const beside = NOT_IN_THE_LOG.filter((name) => record.attachments[name] !== undefined);
  return [
    about,
    `All ${files.length} files are those that the manifest lists.`,
    `${proven} ${proven === 1 ? 'field of the record is as it was' : 'fields of the record are as they were'} written; ${tellMasked(masked)}`,
    ...(beside.length === 0
      ? []
      : [`Covered by the manifest alone, and not by the log: ${beside.join(', ')}.`]),
    ...proof.received.map(tellEarlier),
    ...(heads > 0
      ? ['It agrees with the head that you had before: nothing of before that was changed since.']
      : []),
    ...(heads === 0 && !proof.received.some(({ how }) => how !== 'mailed')
      ? [
          'Nobody outside is known to have had a head of this log before: by itself it proves nothing about what was written before you received it.',
        ]
      : []),
    `The head of this packet, to be kept with today's date: ${head.size}:${head.root}`,
  ];
}

const tellMasked = (count: number): string =>
  count === 0
    ? 'none is masked.'
    : `${count} ${count === 1 ? 'is masked and tells' : 'are masked and tell'} less, as withheld.json says.`;

/** In one zone for everybody, as whoever checks it may sit anywhere; what is no instant stands as it was written. */
const tellUtc = (at: string): string =>
  Number.isNaN(Date.parse(at)) ? at : `${localTime(new Date(at).toISOString(), 0)} UTC`;

/** A head that only was mailed counts for whoever finds the mail, and for nobody else. */
function tellEarlier({ by, at, head: { size, root }, how }: ReceivedHead): string {
  const hold = `Hold it against what ${by} has: ${size} amendments, root ${root}.`;
  if (how !== 'mailed')
    return `Unchanged since ${tellUtc(at)}, when its head was received by ${by}, as the sender says. ${hold}`;
  return (
    `The sender’s mail server took a mail with its head for ${by} at ${tellUtc(at)}, as the sender says. Whether it arrived, nobody ` +
    `can tell from here: whoever has that mail can show by it that nothing was changed since. ${hold}`
  );
}
