import { findBytes } from '../device/sealed-store.js';
import { dropQueued, queueRequest, requeue } from '../device/outbox.js';
import type { QueuedFile, QueuedItem } from '../device/outbox-item.js';
import { clockOffsetS } from '../device/clock-offset.js';
import { unsent as inRecord } from '../words/en/unsent.js';
import { asText } from './item-words.js';

/** The incident that an entry belongs to; null for what belongs to none, such as an outing. */
export function incidentOf(item: QueuedItem): string | null {
  if (item.kind === 'file') return item.incident;
  return /^\/api\/incidents\/([^/]+)\//.exec(item.path)?.[1] ?? null;
}

/** Sends a change that somebody else's stands against, on top of that. */
export function sendOver(item: QueuedItem): Promise<void> {
  const { version } = (item.problem?.current ?? {}) as { version?: number };
  return requeue(item, version === undefined ? {} : { version });
}

/**
 * Puts the words of an entry into the timeline of its incident, where they push out nobody's, and takes the entry back.
 * The note is on the disk before that.
 */
export async function keepAsNote(item: QueuedItem, incident: string): Promise<void> {
  const phoneOffsetS = clockOffsetS() ?? 0;
  const at = { at: item.queuedAt, how: 'pressed', ...(phoneOffsetS !== 0 && { phoneOffsetS }) };
  const what = inRecord.noteText(inRecord.names[item.about] ?? item.about, asText(item));
  await queueRequest({
    line: incident,
    about: 'note',
    method: 'POST',
    path: `/api/incidents/${incident}/sections/timeline/additions`,
    body: { entries: [{ id: `note-${item.key}`.slice(0, 64), at, what }] },
    key: `note-${item.key}`,
  });
  await dropQueued(item.id);
}

/** Hands the bytes of a file to the browser, to be kept wherever the person says; false where they are gone. */
export async function saveCopy(item: QueuedFile): Promise<boolean> {
  const bytes = await findBytes('files', item.id);
  if (bytes === undefined) return false;
  const address = URL.createObjectURL(new Blob([bytes]));
  const link = document.createElement('a');
  link.href = address;
  link.download = item.name;
  link.click();
  URL.revokeObjectURL(address);
  return true;
}
