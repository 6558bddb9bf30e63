import { isJsonObject } from '../record/json-value.js';
import {
  type Manifest,
  MANIFEST_FORMAT,
  PACKET_FILES,
  type PacketProof,
  type PacketRecord,
  PROOF_FORMAT,
  type Unstamped,
  UNSTAMPED,
  type Withheld,
  WITHHELD_FORMAT,
} from './packet.js';

/** The parts of a packet that are read, as they stand in the archive. */
export type PacketTexts = Readonly<Record<'manifest' | 'proof' | 'record' | 'withheld', string | undefined>>;

export interface ReadPacket {
  readonly manifest: Manifest;
  readonly proof: PacketProof;
  readonly record: PacketRecord;
  readonly withheld: Withheld;
}

/** That an archive is no packet, or was changed beyond reading; the message says which file. */
export class UnreadablePacketError extends Error {}

/** @throws UnreadablePacketError where a part is missing or is not what its format says */
export function readPacket(texts: PacketTexts): ReadPacket {
  const manifest = parse<Manifest>(texts, 'manifest', MANIFEST_FORMAT, (it) => [
    isHead(it['head']),
    isText(it['reference']),
    isText(it['madeAt']),
    isText(it['madeBy']),
    isJsonObject(it['recipient']) && isText(it['recipient']['name']),
    isListOf(
      it['files'],
      (file) => isText(file['path']) && isText(file['sha256']) && isEvidence(file['evidence']),
    ),
  ]);
  const proof = parse<PacketProof>(texts, 'proof', PROOF_FORMAT, (it) => [
    isHead(it['head']),
    isListOf(
      it['received'],
      (one) =>
        isHead(one['head']) &&
        isTexts(one['consistency']) &&
        isText(one['by']) &&
        isText(one['at']) &&
        [undefined, 'received', 'mailed'].includes(one['how'] as string | undefined),
    ),
    it['stamped'] === undefined ||
      isListOf(
        it['stamped'],
        (one) => isHead(one['head']) && isText(one['token']) && isTexts(one['consistency']),
      ),
    [undefined, ...UNSTAMPED].includes(it['unstamped'] as Unstamped | undefined),
    isListOf(it['amendments'], isProven),
  ]);
  const record = parse<PacketRecord>(texts, 'record', 'incident-desk/packet-record/1', (it) => [
    isJsonObject(it['sections']),
    isJsonObject(it['attachments']),
  ]);
  const withheld = parse<Withheld>(texts, 'withheld', WITHHELD_FORMAT, (it) => [
    isListOf(it['masked'], (one) => isText(one['section']) && isText(one['path'])),
    isListOf(it['withheld'], (one) => isText(one['kind'])),
  ]);
  return { manifest, proof, record, withheld };
}

type Members = Readonly<Record<string, unknown>>;

function parse<T>(
  texts: PacketTexts,
  part: keyof PacketTexts,
  format: string,
  checks: (it: Members) => boolean[],
): T {
  const file = PACKET_FILES[part];
  const text = texts[part];
  if (text === undefined)
    throw new UnreadablePacketError(`This is no packet, or ${file} was taken out of it.`);
  const value = jsonOf(text);
  if (isJsonObject(value) && value['format'] === format && checks(value).every(Boolean)) return value as T;
  throw new UnreadablePacketError(`${file} was changed, or is of a format that this program does not know.`);
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}

function isProven(one: Members): boolean {
  const { amendment, path, shown, leafHash } = one;
  if (!isJsonObject(amendment) || !isJsonObject(amendment['header']) || !isTexts(path)) return false;
  const { sequence, section } = amendment['header'];
  return (
    typeof sequence === 'number' &&
    isText(section) &&
    isText(leafHash) &&
    isListOf(amendment['fields'], (field) => isText(field['path']) || isText(field['digest'])) &&
    isListOf(shown, (value) => isText(value['of']) && isText(value['salt']) && 'value' in value)
  );
}

function isEvidence(value: unknown): boolean {
  return value === undefined || (isJsonObject(value) && isText(value['id']) && isText(value['sha256']));
}

function isHead(value: unknown): boolean {
  return isJsonObject(value) && typeof value['size'] === 'number' && isText(value['root']);
}

function isListOf(value: unknown, fits: (item: Members) => boolean): boolean {
  return Array.isArray(value) && value.every((item: unknown) => isJsonObject(item) && fits(item));
}

const isText = (value: unknown): boolean => typeof value === 'string';
const isTexts = (value: unknown): boolean => Array.isArray(value) && value.every(isText);
