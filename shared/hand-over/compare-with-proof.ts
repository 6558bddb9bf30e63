import { canonicalJson } from '../proof/canonical-json.js';
import { flattenSection } from '../record/flatten-section.js';
import { isJsonObject, type JsonObject, type JsonValue } from '../record/json-value.js';
import type { ReadPacket } from './read-packet.js';

/** Lists of things that no amendment holds: the manifest alone vouches for them, and the summary says so. */
export const NOT_IN_THE_LOG: readonly string[] = ['determination', 'task', 'privileged'];

/**
 * Holds `record.json` against the values that the amendments show: each field is the one that was written last, or is
 * named as masked. The files are held against the log as well, since it holds the SHA-256 of every piece of evidence.
 */
export function compareWithProof(packet: ReadPacket): { faults: string[]; proven: number; masked: number } {
  const { manifest, proof, record, withheld } = packet;
  const written = new Map<string, JsonValue>();
  for (const { amendment, shown } of proof.amendments) {
    for (const value of shown) {
      // Names without a slash are what an amendment says of itself.
      if (value.of === 'to' && value.path.startsWith('/'))
        written.set(`${amendment.header.section}:${value.path}`, value.value);
    }
  }
  const masked = new Set(withheld.masked.map(({ section, path }) => `${section}:${path}`));
  const faults: string[] = [];
  let proven = 0;
  const seen = new Set<string>();
  for (const [section, document] of sectionsOf(record)) {
    const fields = flattenSection(document);
    for (const [path, value] of fields) {
      const key = `${section}:${path}`;
      seen.add(key);
      if (masked.has(key) || (isListOfIds(path, value, fields) && !written.has(key))) continue;
      const then = written.get(key);
      if (then === undefined) {
        // The log writes no line for what never held anything.
        if (value === null) continue;
        faults.push(`record.json says something at ${path} of ${section} that the log does not prove.`);
      } else if (canonicalJson(then) === canonicalJson(value)) {
        proven += 1;
      } else {
        faults.push(`record.json was changed at ${path} of ${section}: the log holds another value.`);
      }
    }
  }
  for (const [key, value] of written) {
    if (!seen.has(key) && value !== null) {
      faults.push(`record.json lacks ${key.replace(':', ' at ')}, which the log proves.`);
    }
  }
  for (const { path, evidence } of manifest.files) {
    if (evidence === undefined) continue;
    const then = written.get(`evidence:/files/${evidence.id}/sha256`);
    if (then === evidence.sha256) continue;
    faults.push(`${path} is said to be of evidence with another SHA-256 than the one the log holds.`);
  }
  return { faults, proven, masked: masked.size };
}

function sectionsOf({ sections, attachments }: ReadPacket['record']): [string, JsonObject][] {
  const kept = Object.entries(attachments).filter(([name]) => !NOT_IN_THE_LOG.includes(name));
  return [...Object.entries(sections), ...kept].flatMap(([name, document]) =>
    isJsonObject(document) ? [[name, document]] : [],
  );
}

/** The bare order of a list of which not everything leaves cannot be proven; its items can. */
function isListOfIds(path: string, value: JsonValue, fields: ReadonlyMap<string, JsonValue>): boolean {
  return Array.isArray(value) && value.some((id) => fields.has(`${path}/${String(id)}/id`));
}
