import { verifyField, type Opening } from './commit-field.js';
import { hashAmendment, namedFields, REASON_PATH, type Amendment } from './hash-amendment.js';
import { UnprovableError } from './unprovable-error.js';

/** Which commitment of an amendment a shown value opens. */
export type CommitmentName =
  | { readonly of: 'reason' }
  | { readonly of: 'from' | 'to'; /** RFC 6901 pointer of the field. */ readonly path: string };

/** A value that is shown, with the salt that proves it. What is masked or withdrawn is simply not among them. */
export type ShownValue = CommitmentName & Opening;

/** An amendment as it is kept or handed over: what it commits to, its leaf hash, and the values still shown. */
export interface LogEntry {
  readonly amendment: Amendment;
  /** As it stands in the log. */
  readonly leafHash: string;
  readonly shown: readonly ShownValue[];
}

export type AmendmentFault =
  /** Header or commitments are not those the leaf hash was made of. */
  | { readonly code: 'leaf-changed'; readonly sequence: number }
  /** No leaf can be made of header and commitments; pointer and problem say why. */
  | {
      readonly code: 'leaf-unreadable';
      readonly sequence: number;
      readonly pointer: string;
      readonly problem: string;
    }
  /** The shown value (or its salt) is not the one committed to. */
  | { readonly code: 'value-changed'; readonly sequence: number; readonly field: CommitmentName }
  /** A value is shown that the amendment has no commitment for. */
  | { readonly code: 'value-unproven'; readonly sequence: number; readonly field: CommitmentName };

/**
 * The faults of one amendment by itself; none when its leaf and every shown value are what was committed to.
 * Whether the leaf stands in the log is for `verifyLog`, or `verifyInclusion` when only some leaves are at hand.
 * The entry has the declared shape: read it against its schema first when a stranger wrote it.
 * @example
 * verifyAmendment({ amendment, leafHash: hashAmendment(amendment), shown: [] }) // []
 */
export function verifyAmendment({ amendment, leafHash, shown }: LogEntry): AmendmentFault[] {
  const { sequence } = amendment.header;
  const faults: AmendmentFault[] = [];
  try {
    if (hashAmendment(amendment) !== leafHash) faults.push({ code: 'leaf-changed', sequence });
  } catch (error) {
    if (!(error instanceof UnprovableError)) throw error;
    faults.push({ code: 'leaf-unreadable', sequence, pointer: error.pointer, problem: error.problem });
  }
  const committed = new Map(namedFields(amendment).map((change) => [change.path, change]));
  for (const value of shown) {
    const commitment =
      value.of === 'reason' ? amendment.header.reason : committed.get(value.path)?.[value.of];
    const path = value.of === 'reason' ? REASON_PATH : value.path;
    const field: CommitmentName = value.of === 'reason' ? { of: 'reason' } : { of: value.of, path };
    if (commitment === null || commitment === undefined) {
      faults.push({ code: 'value-unproven', sequence, field });
    } else if (!verifyField(commitment, path, value)) {
      faults.push({ code: 'value-changed', sequence, field });
    }
  }
  return faults;
}
