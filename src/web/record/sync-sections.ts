import { sameJson, type JsonObject } from '../../../shared/record/json-value.js';
import { mergeEdits } from '../../../shared/record/merge-edits.js';
import { Store } from '../app/store.js';
import { queryClient } from '../ask/query-client.js';
import { dropQueued, outbox, queueRequest, readOutbox, requeue } from '../device/outbox.js';
import type { QueuedItem, QueuedRequest } from '../device/outbox-item.js';
import { onNotTaken, onSent } from '../device/send-outbox.js';
import { recordReasons } from '../words/en/record-reasons.js';
import { addsOnly } from './adds-only.js';
import { dropDraft, findDraft, keepDraft, readDrafts } from './draft-store.js';
import type { SectionAnswer } from './record-answers.js';
import { draftId, type SectionDraft } from './section-draft.js';

/** What the record queues is known by this: a call writes in the same sections. */
const ABOUT = 'record';

/** When each section last arrived from this page, and whether another's words were put beside ours. */
export const arrivals = new Store<Readonly<Record<string, { at: string; both: boolean }>>>({});

/** Listens to what becomes of sections that were sent, and reads what was being written before. */
export async function beginSectionSync(): Promise<void> {
  onSent(noteArrival);
  onNotTaken(putTogether);
  await readDrafts();
}

const ADDED = /^\/api\/incidents\/([^/]+)\/sections\/([^/]+)\/additions$/;

const addressOf = ({ incident, section }: Pick<SectionDraft, 'incident' | 'section'>): string =>
  `/api/incidents/${incident}/sections/${section}`;

/** What waits of a draft, or was not taken. */
export function queuedOf(
  draft: Pick<SectionDraft, 'incident' | 'section' | 'by'>,
  items: readonly QueuedItem[],
) {
  return items.find(
    (item): item is QueuedRequest =>
      item.kind === 'request' &&
      item.about === ABOUT &&
      item.by === draft.by &&
      item.path === addressOf(draft),
  );
}

/** Queues a section as it is written. It is on the disk when this returns, and goes by itself. */
export async function sendSection(draft: SectionDraft, reason: string | undefined): Promise<void> {
  const earlier = queuedOf(draft, await readOutbox());
  if (earlier?.state === 'refused' || earlier?.state === 'conflict') await dropQueued(earlier.id);
  const { document, incident, version } = draft;
  const body = { document, ...(reason !== undefined && { reason }) };
  await queueRequest({ line: incident, about: ABOUT, method: 'PUT', path: addressOf(draft), body, version });
  keepDraft({ ...withoutOpen(draft), queued: document });
}

/** On a device where nobody is signed in: what is written is added, and nothing that stands there is altered or shown. */
export async function addToSection(draft: SectionDraft): Promise<void> {
  const path = `${addressOf(draft)}/additions`;
  await queueRequest({
    line: draft.incident,
    about: ABOUT,
    method: 'POST',
    path,
    body: draft.document,
    key: crypto.randomUUID(),
  });
  dropDraft(draft.id);
}

/** A draft that was begun on an older version of the section, on top of what stands there now. */
export function rebaseDraft(
  draft: SectionDraft,
  there: Pick<SectionAnswer, 'version' | 'finished' | 'document'>,
) {
  const { document, bothKept, open } = mergeEdits(draft.base, draft.document, there.document);
  const { version, finished } = there;
  const rebased = {
    ...withoutOpen(draft),
    base: there.document,
    version,
    finished,
    document,
    bothKept,
    merged: true as const,
  };
  return open.length === 0 ? rebased : { ...rebased, open };
}

function noteArrival(item: QueuedItem, answer: unknown): void {
  if (item.kind !== 'request' || item.about !== ABOUT) return;
  const added = ADDED.exec(item.path);
  if (added !== null) noteSent(draftId(added[1] ?? '', added[2] ?? '', item.by), false);
  const draft = draftOf(item);
  if (draft === undefined) return;
  const { version, document, finished } = answer as SectionAnswer;
  const sent = (item.body as { document: JsonObject }).document;
  noteSent(draft.id, draft.merged === true);
  // Shown at once: until it is asked for anew the page would show what stood there before.
  queryClient.setQueryData([item.path], { answer, keptAt: null });
  if (sameJson(draft.document, sent)) dropDraft(draft.id);
  else keepDraft({ ...withoutQueued(draft), base: document, version, finished });
}

function noteSent(id: string, both: boolean): void {
  arrivals.set({ ...arrivals.value, [id]: { at: new Date().toISOString(), both } });
}

/**
 * Somebody else changed the section meanwhile. What both wrote is put together and sent again; where only one answer can
 * stand, the entry stays on the device until its writer has chosen.
 */
async function putTogether(item: QueuedItem): Promise<boolean> {
  const draft = draftOf(item);
  const now = (await readOutbox()).find(({ id }) => id === item.id);
  const there = now?.problem?.current as SectionAnswer | undefined;
  if (draft === undefined || item.kind !== 'request' || now?.state !== 'conflict' || there === undefined) {
    return false;
  }
  const { document: sent, reason } = item.body as { document: JsonObject; reason?: string };
  const merged = mergeEdits(draft.base, sent, there.document);
  const rebased = rebaseDraft(draft, there);
  if (merged.open.length > 0) {
    keepDraft(withoutQueued(rebased));
    return true;
  }
  keepDraft({ ...rebased, queued: merged.document });
  const why = addsOnly(there.document, merged.document) ? reason : (reason ?? recordReasons.both);
  const body = { document: merged.document, ...(why !== undefined && { reason: why }) };
  await requeue(item, { body, version: there.version });
  return true;
}

function draftOf(item: QueuedItem): SectionDraft | undefined {
  if (item.kind !== 'request' || item.about !== ABOUT || item.method !== 'PUT') return undefined;
  const [, incident = '', section = ''] =
    /^\/api\/incidents\/([^/]+)\/sections\/([^/]+)$/.exec(item.path) ?? [];
  return findDraft(draftId(incident, section, item.by));
}

function withoutQueued({ queued, ...draft }: SectionDraft): SectionDraft {
  void queued;
  return draft;
}

function withoutOpen({ open, ...draft }: SectionDraft): SectionDraft {
  void open;
  return draft;
}

/** What waits of an addition by this device. */
export const additionsOf = (incident: string, section: string, items = outbox.value): readonly QueuedItem[] =>
  items.filter(
    (item) =>
      item.kind === 'request' && item.path === `/api/incidents/${incident}/sections/${section}/additions`,
  );
