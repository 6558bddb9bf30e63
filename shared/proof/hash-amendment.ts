import { canonicalBytes } from './canonical-json.js';
import { leafHash } from './merkle-log.js';
import { isSha256Hex } from './sha256-hex.js';
import { UnprovableError } from './unprovable-error.js';

/** What an amendment says of itself in the clear; ids, never names or words of the record. */
export interface AmendmentHeader {
  /** The place in the log, from 1; amendment n is leaf n − 1 of the Merkle tree. */
  readonly sequence: number;
  readonly incidentId: string;
  /** Id of the account; `null` while an enrolled device has not said who holds it. */
  readonly who: string | null;
  /** Id of the device, where it is a known one. */
  readonly device: string | null;
  /** Instant in UTC (RFC 3339). */
  readonly when: string;
  /** The part of the record it belongs to. */
  readonly section: string;
  /** `commitField(REASON_PATH, …)`; `null` where no reason was asked for. */
  readonly reason: string | null;
}

/** One field changed: commitments to what stood there and to what stands there now, each with its own salt. */
export interface FieldChange {
  /** RFC 6901 pointer of the field; it stays readable when the values are masked. */
  readonly path: string;
  readonly from: string;
  readonly to: string;
}

/** What a leaf of the log proves. It holds no value, so a value can go later and the leaf stays as it is. */
export interface Amendment {
  readonly header: AmendmentHeader;
  readonly fields: readonly FieldChange[];
}

/** Stands for the reason in its commitment. A pointer begins with a slash, so no field can be called this. */
export const REASON_PATH = 'reason';

const FORMAT = 'incident-desk/amendment/1';

/**
 * The data of the leaf: the canonical JSON of header and field commitments, fields in the order of their paths,
 * in UTF-8. Members beyond the declared ones are not part of it. Throws an `UnprovableError` for a sequence
 * number below 1, for anything but a hash where a commitment belongs (a value put there would be in the clear
 * for ever) and for a field named twice.
 * @example
 * amendmentBytes({ header, fields: [] })
 * // '{"fields":[],"format":"incident-desk/amendment/1","header":{"device":…,"who":…}}'
 */
export function amendmentBytes({ header, fields }: Amendment): Uint8Array {
  const { sequence, incidentId, who, device, when, section, reason } = header;
  if (!Number.isSafeInteger(sequence) || sequence < 1) {
    throw new UnprovableError('/header/sequence', 'A sequence number is a whole number from 1.');
  }
  if (reason !== null) requireCommitment(reason, '/header/reason');
  return canonicalBytes({
    format: FORMAT,
    header: { sequence, incidentId, who, device, when, section, reason },
    fields: sortFields(fields),
  });
}

/**
 * The leaf hash of an amendment, SHA-256(0x00 ‖ data) by RFC 6962 section 2.1.
 * @example hashAmendment({ header, fields }) === leafHash(amendmentBytes({ header, fields })) // true
 */
export function hashAmendment(amendment: Amendment): string {
  return leafHash(amendmentBytes(amendment));
}

function sortFields(fields: readonly FieldChange[]): FieldChange[] {
  const seen = new Set<string>();
  const copies = fields.map(({ path, from, to }, index) => {
    requireCommitment(from, `/fields/${index}/from`);
    requireCommitment(to, `/fields/${index}/to`);
    if (seen.has(path)) throw new UnprovableError(`/fields/${index}/path`, 'The field is named twice.');
    seen.add(path);
    return { path, from, to };
  });
  return copies.sort((a, b) => (a.path < b.path ? -1 : 1));
}

function requireCommitment(value: string, pointer: string): void {
  if (!isSha256Hex(value)) {
    throw new UnprovableError(pointer, 'A commitment is 64 lower-case hex digits, as commitField gives it.');
  }
}
