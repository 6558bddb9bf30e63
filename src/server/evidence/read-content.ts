import { open } from 'node:fs/promises';
import { fileTypeFromFile } from 'file-type';
import { type EvidenceKind, evidenceKind } from '../../../shared/record/evidence-kind.js';
import { judgeEvidenceText } from '../../../shared/record/evidence-text.js';

export interface TakenContent {
  readonly type: string;
  readonly kind: EvidenceKind;
}

export interface RefusedContent {
  readonly refused: string;
  /** Whether nothing that is still to come could change it. */
  readonly certain: boolean;
}

/** What a file is by its content, or why it is not taken. */
export type Content = TakenContent | RefusedContent;

/** Enough to tell any type by; what is not known by then is text or nothing. */
export const HEAD_BYTES = 64 * 1024;

/** Reads what a file is from its bytes alone; its name and what a device called it count for nothing. */
export async function readContent(path: string): Promise<Content> {
  const found = (await fileTypeFromFile(path))?.mime;
  const verdict =
    found === undefined || found === 'application/xml'
      ? judgeEvidenceText(await textHead(path))
      : { type: found };
  if (verdict === null) return { refused: UNKNOWN, certain: false };
  if ('refused' in verdict) return { ...verdict, certain: true };
  const { type } = verdict;
  const kind = evidenceKind(type);
  if (kind !== undefined) return { type, kind };
  // Letters and sheets of an office are archives until the part is there that says what they are.
  if (ARCHIVE.test(type)) return { refused: `${BY_CONTENT} an archive (${type}): ${UNPACK}`, certain: false };
  return {
    refused: `${BY_CONTENT} ${type}, which is not taken: it may be a program. ${SEND}`,
    certain: true,
  };
}

const ARCHIVE = /zip|tar|rar|7z|gzip|bzip|compress|archive/;
const BY_CONTENT = 'By its content this is';
const UNPACK = 'send what is in it, file by file.';
const SEND = 'Send photographs, video, recordings, PDF, text, or sheets and letters without macros.';
const UNKNOWN = `${BY_CONTENT} none of the photographs, videos, recordings and documents that are taken.`;

/** The beginning as text; undefined where the bytes are no UTF-8. */
async function textHead(path: string): Promise<string | undefined> {
  const handle = await open(path, 'r');
  try {
    const { buffer, bytesRead } = await handle.read(Buffer.alloc(HEAD_BYTES), 0, HEAD_BYTES, 0);
    // In a stream, so that a character that the end of the head cuts in two is no fault.
    return new TextDecoder('utf-8', { fatal: true }).decode(buffer.subarray(0, bytesRead), { stream: true });
  } catch (error) {
    if (error instanceof TypeError) return undefined;
    throw error;
  } finally {
    await handle.close();
  }
}
