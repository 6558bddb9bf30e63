import { verifyAmendment, type AmendmentFault } from '../proof/verify-amendment.js';
import { verifyConsistency } from '../proof/prove-consistency.js';
import { verifyInclusion } from '../proof/prove-inclusion.js';
import type { TimeStamp } from '../proof/verify-time-stamp.js';
import type { LogHead } from '../proof/merkle-log.js';
import { compareWithProof } from './compare-with-proof.js';
import { PACKET_FILES } from './packet.js';
import { type ReadPacket, readPacket, type PacketTexts, UnreadablePacketError } from './read-packet.js';

/** What a file of the archive really is. */
export interface FoundFile {
  readonly path: string;
  readonly size: number;
  readonly sha256: string;
}

export interface PacketCheck {
  /** Each in a sentence that names what was changed; none when everything fits together. */
  readonly faults: readonly string[];
  readonly packet: ReadPacket | null;
  /** Fields of `record.json` that the log proves, and those that are masked and so cannot be proven. */
  readonly proven: number;
  readonly masked: number;
  readonly stamps: readonly SeenStamp[];
}

/** A head with what its time stamp says; null where nobody has looked at that (`checkTimeStamps`). */
export interface SeenStamp {
  readonly head: LogHead;
  readonly stamp: TimeStamp | null;
}

/**
 * Holds a packet against itself: every file against the manifest, every shown value against the amendment that wrote it,
 * every amendment against the head of the log, and the record against what is shown. Whether the head is the true one
 * only somebody can say who received it from elsewhere: `heads` are such.
 */
export function verifyPacket(
  found: readonly FoundFile[],
  texts: PacketTexts,
  heads: readonly LogHead[] = [],
): PacketCheck {
  try {
    const packet = readPacket(texts);
    const { faults, proven, masked } = compareWithProof(packet);
    const all = [...fileFaults(found, packet), ...proofFaults(packet, heads), ...faults];
    const stamps = (packet.proof.stamped ?? []).map(({ head }) => ({ head, stamp: null }));
    return { faults: [...new Set(all)], packet, proven, masked, stamps };
  } catch (error) {
    if (!(error instanceof UnreadablePacketError)) throw error;
    return { faults: [error.message], packet: null, proven: 0, masked: 0, stamps: [] };
  }
}

function fileFaults(found: readonly FoundFile[], { manifest }: ReadPacket): string[] {
  const there = new Map(found.map((file) => [file.path, file]));
  const listed = new Set<string>([PACKET_FILES.manifest, ...manifest.files.map(({ path }) => path)]);
  const changed = manifest.files.flatMap(({ path, size, sha256 }) => {
    const file = there.get(path);
    if (file === undefined) return [`${path} is missing: the manifest lists it.`];
    if (file.sha256 === sha256 && file.size === size) return [];
    return [`${path} was changed: its SHA-256 is ${file.sha256}, and the manifest says ${sha256}.`];
  });
  const more = found.filter(({ path }) => !listed.has(path));
  return [...changed, ...more.map(({ path }) => `${path} was added: the manifest does not list it.`)];
}

function proofFaults({ manifest, proof }: ReadPacket, heads: readonly LogHead[]): string[] {
  const { head, received, stamped = [], amendments } = proof;
  const faults = amendments.flatMap((one) => {
    const { sequence } = one.amendment.header;
    const claim = { leafHash: one.leafHash, index: sequence - 1, head };
    const stands = verifyInclusion(claim, one.path);
    return [
      ...verifyAmendment(one).map(tellFault),
      ...(stands ? [] : [`Amendment ${sequence} does not stand in the log that has this head.`]),
    ];
  });
  if (!sameHead(manifest.head, head))
    faults.push('The manifest names another head of the log than the proof.');
  for (const one of received) {
    if (!verifyConsistency(one.head, head, one.consistency)) {
      faults.push(
        `The log is not the one whose head ${HAD[one.how ?? 'received']} ${one.by}: something before it was changed.`,
      );
    }
  }
  for (const one of stamped) {
    if (!verifyConsistency(one.head, head, one.consistency))
      faults.push('The log is not the one whose head was stamped: something before it was changed.');
  }
  const known = [head, ...[...received, ...stamped].map((one) => one.head)];
  for (const one of heads) {
    const twin = known.find(({ size }) => size === one.size);
    if (twin === undefined) {
      faults.push(
        `The packet proves nothing about a head at ${one.size} amendments: ask for a newer packet.`,
      );
    } else if (twin.root !== one.root) {
      faults.push(
        `The head at ${one.size} amendments is not the one that you received: the log was changed.`,
      );
    }
  }
  return faults;
}

const HAD = { received: 'was received by', mailed: 'was mailed to' } as const;

function tellFault(fault: AmendmentFault): string {
  const where = `Amendment ${fault.sequence} in ${PACKET_FILES.proof}`;
  switch (fault.code) {
    case 'leaf-changed':
      return `${where} was changed: its lines are not those that the log holds.`;
    case 'leaf-unreadable':
      return `${where} was changed: ${fault.problem}`;
    case 'value-changed':
    case 'value-unproven': {
      const what = fault.field.of === 'reason' ? 'the reason' : fault.field.path;
      return `${where} was changed at ${what}: the value is not the one that was written then.`;
    }
  }
}

function sameHead(one: LogHead, other: LogHead): boolean {
  return one.size === other.size && one.root === other.root;
}
