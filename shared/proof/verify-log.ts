import { buildTree, headAt, type LogHead } from './merkle-log.js';
import { isSha256Hex } from './sha256-hex.js';
import { verifyAmendment, type AmendmentFault, type LogEntry } from './verify-amendment.js';

export type LogFault =
  | AmendmentFault
  /** An amendment is missing, doubled or out of order: `found` stands where `expected` should. */
  | { readonly code: 'sequence-gap'; readonly expected: number; readonly found: number }
  /** The log ends before the last amendment that the head covers. */
  | { readonly code: 'tail-removed'; readonly remembered: number; readonly found: number }
  /** The leaves that the head covers are not those it was made of. */
  | {
      readonly code: 'head-mismatch';
      readonly size: number;
      readonly remembered: string;
      readonly found: string;
    }
  /** What was remembered is not a head: its size is not a number of leaves. */
  | { readonly code: 'head-unreadable'; readonly size: number };

/** Takes the place of a leaf hash that is none (and is named as changed): no remembered head matches it. */
const NO_HASH = '0'.repeat(64);

/**
 * All faults of a whole log against heads remembered elsewhere; none means that no amendment up to the largest
 * head was changed, removed, added or moved, and every value shown is the one written then. What came after
 * the largest head is only proven to agree with itself. Several heads narrow down where a log was rewritten: a
 * head that still matches clears all that it covers.
 *
 * Masked and withdrawn values are no faults. The heads are checked against the leaf hashes as kept, so a row
 * changed behind the log's back is named by itself while the heads still vouch for the rest.
 * @example
 * verifyLog([], [{ size: 2, root }]) // [{ code: 'tail-removed', remembered: 2, found: 0 }]
 */
export function verifyLog(entries: readonly LogEntry[], heads: readonly LogHead[]): LogFault[] {
  return [...entries.flatMap(verifyAmendment), ...findGaps(entries), ...checkHeads(entries, heads)];
}

function findGaps(entries: readonly LogEntry[]): LogFault[] {
  const faults: LogFault[] = [];
  let expected = 1;
  for (const { amendment } of entries) {
    const found = amendment.header.sequence;
    if (found !== expected) faults.push({ code: 'sequence-gap', expected, found });
    expected = found + 1;
  }
  return faults;
}

function checkHeads(entries: readonly LogEntry[], heads: readonly LogHead[]): LogFault[] {
  const tree = buildTree(entries.map(({ leafHash }) => (isSha256Hex(leafHash) ? leafHash : NO_HASH)));
  const last = entries.at(-1)?.amendment.header.sequence ?? 0;
  return heads.flatMap(({ size, root }): LogFault[] => {
    if (!Number.isSafeInteger(size) || size < 0) return [{ code: 'head-unreadable', size }];
    if (last < size) return [{ code: 'tail-removed', remembered: size, found: last }];
    // Too few leaves although the last one is there: they are missing in between, which is a gap already named.
    if (entries.length < size) return [];
    const found = headAt(tree, size).root;
    return found === root ? [] : [{ code: 'head-mismatch', size, remembered: root, found }];
  });
}
