import { localTime } from '../time/tell-time.js';
import { NOT_IN_THE_LOG } from './compare-with-proof.js';
import type { ReceivedHead, Unstamped } from './packet.js';
import type { PacketCheck, SeenStamp } from './verify-packet.js';

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

function linesOf({ faults, packet, proven, masked, stamps }: PacketCheck, heads: number): string[] {
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
    ...stamps.map(tellStamp),
    ...(proof.unstamped === undefined ? [] : [NO_STAMP[proof.unstamped]]),
    ...(heads > 0
      ? ['It agrees with the head that you had before: nothing of before that was changed since.']
      : []),
    ...(heads === 0 &&
    !proof.received.some(({ how }) => how !== 'mailed') &&
    !stamps.some(({ stamp }) => stamp?.trusted)
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

/** A time stamp is as good as the certificate it rests on, and says nothing of whether what was written is true. */
function tellStamp({ head: { size, root }, stamp }: SeenStamp): string {
  if (stamp === null)
    return `There is a time stamp of its head at ${size} amendments, and it was not looked at here: check the packet on a page with HTTPS, or with the command.`;
  const { at, authority, issuer, policy, certificate, trusted } = stamp;
  const what = `${authority} (certificate issued by ${issuer}, policy ${policy}) stamped its head of ${size} amendments, root ${root}`;
  if (trusted) return `Unchanged since ${at}: then ${what}. Its certificate leads to one that you gave.`;
  return (
    `Unchanged since ${at} if the certificate of the time stamp is genuine: it says that then ${what}. It fits in itself. ` +
    `Whose certificate it is was not checked: give a file of those that you trust, or compare its SHA-256, ${certificate}, with what ${authority} publishes.`
  );
}

const NO_STAMP: Readonly<Record<Unstamped, string>> = {
  'no-answer': 'No time stamp could be had when it was made: the authority did not answer.',
  refused: 'No time stamp could be had when it was made: the authority refused.',
  unfit: 'No time stamp could be had when it was made: what the authority sent did not fit.',
};
