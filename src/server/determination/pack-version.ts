import { createHash } from 'node:crypto';
import { packCode } from '../../../shared/law/pack-code.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';
import { canonicalJson } from '../../../shared/proof/canonical-json.js';

/** Which text of a jurisdiction's law a determination used. */
export interface PackVersion {
  readonly jurisdiction: string;
  /** Of a pack on another matter. */
  readonly subject?: string;
  /** Edition shown by the text that was read. */
  readonly asOf: string | null;
  readonly readOn: string;
  /** Of the pack as JSON by RFC 8785, in hexadecimal: a corrected pack has another. */
  readonly sha256: string;
}

export function packVersion(pack: RulePack): PackVersion {
  const { jurisdiction, subject, asOf, readOn } = pack;
  return {
    jurisdiction,
    ...(subject !== undefined && { subject }),
    asOf,
    readOn,
    sha256: sha256(canonicalJson(pack)),
  };
}

/** One mark for a whole shelf of packs. */
export function digestOf(versions: readonly PackVersion[]): string {
  return sha256(canonicalJson(versions.map((version) => [packCode(version), version.sha256])));
}

function sha256(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
