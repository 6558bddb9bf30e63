import { AskError } from '../ask/ask-error.js';
import { ask } from '../ask/ask.js';
import type { QueuedFile } from './outbox-item.js';
import { findBytes } from './sealed-store.js';

/** Small enough that a piece gets through between two holes in the signal. */
const PIECE_BYTES = 256 * 1024;
const OCTETS = 'application/offset+octet-stream';

interface Upload {
  readonly id: string;
  readonly offset: number;
}

/** Sends a file piece by piece, going on where it broke off; gives the receipt of the service. */
export async function sendFile(item: QueuedFile): Promise<unknown> {
  const { incident, name, size, sha256, words, key, by } = item;
  const headers = by === null ? {} : { 'desk-person': by };
  const uploads = `/api/incidents/${incident}/evidence/uploads`;
  const started = await ask<Upload>(uploads, {
    method: 'POST',
    body: { name, size, sha256, ...(words !== undefined && { about: words }) },
    key,
    headers,
    quiet: true,
  });
  const bytes = (await findBytes('files', item.id)) ?? new ArrayBuffer(0);
  const address = `${uploads}/${started.id}`;
  let offset = started.offset;
  while (offset < size) offset = await sendPiece(address, bytes, offset, headers);
  return ask(`${address}/finish`, { method: 'POST', headers, quiet: true });
}

/** Sends the next piece; where the service has more or less than we thought, it says where to go on. */
async function sendPiece(
  address: string,
  bytes: ArrayBuffer,
  offset: number,
  headers: Record<string, string>,
): Promise<number> {
  const piece = new Blob([bytes.slice(offset, offset + PIECE_BYTES)]);
  try {
    await ask(address, {
      method: 'PATCH',
      body: piece,
      headers: { ...headers, 'content-type': OCTETS, 'upload-offset': String(offset) },
      quiet: true,
    });
    return offset + piece.size;
  } catch (error) {
    if (!(error instanceof AskError) || error.problem.status !== 409) throw error;
    const { offset: there } = (error.problem.current ?? {}) as { offset?: number };
    if (there === undefined || there === offset) throw error;
    return there;
  }
}
