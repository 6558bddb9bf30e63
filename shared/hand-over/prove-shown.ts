import { hideFields, namedFields } from '../proof/hash-amendment.js';
import { type MerkleTree, headAt, type LogHead } from '../proof/merkle-log.js';
import { proveConsistency } from '../proof/prove-consistency.js';
import { proveInclusion } from '../proof/prove-inclusion.js';
import type { LogEntry, ShownValue } from '../proof/verify-amendment.js';
import { ASIDE } from '../record/replay-amendments.js';
import type { DecidedField } from './apply-section.js';
import {
  type EarlierHead,
  type PacketProof,
  PROOF_FORMAT,
  type ReceivedHead,
  type StampedHead,
} from './packet.js';

/** Which openings leave beside those of the values that stand. */
export interface ShownBeside {
  /** What a shown field said before. */
  readonly earlier: boolean;
  readonly reasons: boolean;
  readonly authors: boolean;
}

/** Heads that left before, and those that were stamped. */
export interface HeadsBefore {
  readonly received: readonly EarlierHead[];
  readonly stamped: readonly Omit<StampedHead, 'consistency'>[];
}

/**
 * The proof of every field that leaves as it stands: its latest amendment with the opening of that value alone. Of a
 * field that is masked or stays nothing leaves but its commitment, which cannot be tried out without the salt; amendments
 * of which nothing is shown do not leave.
 * @param tree of the whole log
 */
export function proveShown(
  entries: readonly LogEntry[],
  tree: MerkleTree,
  fields: readonly DecidedField[],
  { earlier, reasons, authors }: ShownBeside,
  { received, stamped }: HeadsBefore,
): PacketProof {
  const going = new Set(
    fields.filter(({ verdict }) => verdict.does === 'goes').map(({ section, path }) => keyOf(section, path)),
  );
  const latest = new Map<string, number>();
  for (const { amendment } of entries) {
    for (const { path } of namedFields(amendment))
      latest.set(keyOf(amendment.header.section, path), sequenceOf(amendment));
  }
  const head = headAt(tree);
  const amendments = entries.flatMap(({ amendment, leafHash, shown }) => {
    const { section, sequence } = amendment.header;
    const ofFields = shown.filter((value) => {
      if (value.of === 'reason' || !value.path.startsWith('/')) return false;
      const key = keyOf(section, value.path);
      return going.has(key) && (earlier || (value.of === 'to' && latest.get(key) === sequence));
    });
    if (ofFields.length === 0) return [];
    const beside = shown.filter((value) => isBeside(value, reasons, authors));
    const path = proveInclusion(tree, sequence - 1);
    const leaving = [...beside, ...ofFields];
    const named = new Set(leaving.map((value) => (value.of === 'reason' ? '' : value.path)));
    return [{ amendment: hideFields(amendment, (one) => named.has(one)), leafHash, path, shown: leaving }];
  });
  return {
    format: PROOF_FORMAT,
    head,
    received: received.map((one): ReceivedHead => sinceThen(one, tree, head)),
    ...(stamped.length > 0 && {
      stamped: stamped.map((one): StampedHead => sinceThen(one, tree, head)),
    }),
    amendments,
  };
}

function isBeside(value: ShownValue, reasons: boolean, authors: boolean): boolean {
  if (value.of === 'reason') return reasons;
  return authors && value.of === 'to' && value.path === ASIDE.person;
}

function sinceThen<One extends { readonly head: LogHead }>(one: One, tree: MerkleTree, head: LogHead) {
  return { ...one, consistency: proveConsistency(tree, one.head.size, head.size) };
}

const sequenceOf = ({ header }: LogEntry['amendment']): number => header.sequence;
const keyOf = (section: string, path: string): string => `${section}:${path}`;
