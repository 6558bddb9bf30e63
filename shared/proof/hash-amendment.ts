import { canonicalBytes } from './canonical-json.js';
import { leafHash } from './merkle-log.js';
import { isSha256Hex, sha256Hex } from './sha256-hex.js';
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
  /** RFC 6901 pointer of the field. */
  readonly path: string;
  readonly from: string;
  readonly to: string;
}

/** A field of which not even the path leaves: "cause of death" tells somebody died, whatever it says. */
export interface HiddenChange {
  /** `digestChange` of the field; it cannot be guessed, as it holds commitments that cannot. */
  readonly digest: string;
}

/** What a leaf of the log proves. It holds no value, so a value can go later and the leaf stays as it is. */
export interface Amendment {
  readonly header: AmendmentHeader;
  readonly fields: readonly (FieldChange | HiddenChange)[];
}

/** Stands for the reason in its commitment. A pointer begins with a slash, so no field can be called this. */
export const REASON_PATH = 'reason';

const FORMAT = 'incident-desk/amendment/2';
const CHANGE = 'incident-desk/change/1';

/** The fields that an amendment names: all of them as it is kept, those that are shown once it has left. */
export function namedFields({ fields }: Pick<Amendment, 'fields'>): FieldChange[] {
  return fields.filter((field): field is FieldChange => !isHidden(field));
}

/**
 * What of a field goes into the leaf: SHA-256 over the canonical JSON of `[domain, path, from, to]`.
 * @example digestChange({ path: '/people/p1/name', from, to }).length // 64
 */
export function digestChange({ path, from, to }: FieldChange): string {
  return sha256Hex(canonicalBytes([CHANGE, path, from, to]));
}

/**
 * The same amendment, its leaf unchanged, that names no other fields than those asked for.
 * @example hideFields(amendment, (path) => path === '/craft').fields // [{ path: '/craft', … }, { digest: '5e…' }]
 */
export function hideFields(amendment: Amendment, isNamed: (path: string) => boolean): Amendment {
  const fields = amendment.fields.map((field) =>
    isHidden(field) || isNamed(field.path) ? field : { digest: digestChange(field) },
  );
  return { ...amendment, fields };
}

/**
 * The data of the leaf: the canonical JSON of header and digests of the fields, digests in their own order, in UTF-8. Members beyond the declared ones are not part of it. Throws an `UnprovableError` for a sequence
 * number below 1, for anything but a hash where a commitment belongs (a value put there would be in the clear
 * for ever) and for a field named twice.
 * @example
 * amendmentBytes({ header, fields: [] })
 * // '{"fields":[],"format":"incident-desk/amendment/2","header":{"device":…,"who":…}}'
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
    fields: digestsOf(fields),
  });
}

/**
 * The leaf hash of an amendment, SHA-256(0x00 ‖ data) by RFC 6962 section 2.1.
 * @example hashAmendment({ header, fields }) === leafHash(amendmentBytes({ header, fields })) // true
 */
export function hashAmendment(amendment: Amendment): string {
  return leafHash(amendmentBytes(amendment));
}

function isHidden(field: FieldChange | HiddenChange): field is HiddenChange {
  return 'digest' in field;
}

function digestsOf(fields: Amendment['fields']): string[] {
  const seen = new Set<string>();
  const digests = fields.map((field, index) => {
    const name = isHidden(field) ? field.digest : field.path;
    if (seen.has(name)) throw new UnprovableError(`/fields/${index}/path`, 'The field is named twice.');
    seen.add(name);
    if (isHidden(field)) {
      requireCommitment(field.digest, `/fields/${index}/digest`);
      return field.digest;
    }
    requireCommitment(field.from, `/fields/${index}/from`);
    requireCommitment(field.to, `/fields/${index}/to`);
    return digestChange(field);
  });
  return digests.sort();
}

function requireCommitment(value: string, pointer: string): void {
  if (!isSha256Hex(value)) {
    throw new UnprovableError(pointer, 'A commitment is 64 lower-case hex digits, as commitField gives it.');
  }
}
