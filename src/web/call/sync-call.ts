import type { JsonObject } from '../../../shared/record/json-value.js';
import { dropQueued, outbox, queueRequest, readOutbox } from '../device/outbox.js';
import type { QueuedItem } from '../device/outbox-item.js';
import { onNotTaken, onSent } from '../device/send-outbox.js';
import { additionOf } from './addition-of.js';
import type { CallDraft } from './call-draft.js';
import { documentsOf } from './call-documents.js';
import { calls, changeCall, dropOldCalls, readCalls } from './call-store.js';

/** Long enough to take a slip of the thumb back before it is sent. */
const SETTLE_MS = 3000;
const REASON = 'Said or pressed differently while the call was taken.';

/** What it queues is known by this: others write in the same sections. */
const ABOUT = 'call';

const settling = new Map<string, ReturnType<typeof setTimeout>>();

/** Brings what a call says to the service, a moment after the last touch. */
export function syncSoon(id: string): void {
  clearTimeout(settling.get(id));
  settling.set(
    id,
    setTimeout(() => void syncCall(id), SETTLE_MS),
  );
}

/** Takes up, when the desk is opened, what was not sent before: the browser may have been killed. */
export async function beginCallSync(): Promise<void> {
  onSent(noteArrival);
  onNotTaken(noteOthersWords);
  // Left with the phone in the pocket: nothing waits for the moment to pass.
  document.addEventListener('visibilitychange', () => {
    if (document.hidden) for (const { id } of calls.value) void syncCall(id);
  });
  await readCalls();
  await readOutbox();
  await dropOldCalls((draft) => !isOnlyHere(draft, outbox.value));
  for (const { id } of calls.value) await syncCall(id);
}

/** Whether a part of the call has not arrived yet. */
export function isOnlyHere(draft: CallDraft, items: readonly QueuedItem[]): boolean {
  return (
    draft.sentAt === undefined ||
    items.some(({ line }) => line === draft.id) ||
    Object.entries(documentsOf(draft)).some(([section, now]) => !isSame(draft.parts[section]?.document, now))
  );
}

/** Queues the opening at the first touch: what belongs to the call is queued behind it. */
export function openCall(id: string): Promise<void> {
  return oneByOne(async () => {
    await openUnlessOpened(id);
  });
}

/** Queues what differs from what was queued before: one request for a section at a time, the next when that has arrived. */
function syncCall(id: string): Promise<void> {
  clearTimeout(settling.get(id));
  return oneByOne(() => syncSections(id));
}

let turn: Promise<unknown> = Promise.resolve();

/** So that nothing is queued twice. */
function oneByOne(work: () => Promise<void>): Promise<void> {
  const next = turn.then(work);
  turn = next.catch(() => undefined);
  return next;
}

async function openUnlessOpened(id: string): Promise<CallDraft | null> {
  const draft = await changeCall(id, (before) => before);
  if (draft === null || draft.sentAt !== undefined) return draft;
  const waiting = await readOutbox();
  const isQueued = waiting.some((item) => item.kind === 'request' && item.line === id && item.opens === true);
  if (!isQueued) await queueOpening(draft);
  return draft;
}

async function syncSections(id: string): Promise<void> {
  const draft = await openUnlessOpened(id);
  if (draft === null) return;
  const mine = (await readOutbox()).filter((item) => item.line === id);
  for (const [section, now] of Object.entries(documentsOf(draft))) {
    const address = sectionAddress(id, section);
    const before = draft.parts[section];
    const isBusy = mine.some((item) => item.kind === 'request' && item.path.startsWith(address));
    if (isBusy || isSame(before?.document, now)) continue;
    if (await queueSection(draft, section, now)) {
      await changeCall(id, (there) => ({
        ...there,
        parts: { ...there.parts, [section]: { ...there.parts[section], document: now } },
      }));
    }
  }
}

function queueOpening({ id, entry, taken }: CallDraft): Promise<unknown> {
  return queueRequest({
    line: id,
    about: ABOUT,
    method: 'POST',
    path: '/api/incidents',
    // The least that opens it, the same on every try; the rest follows section by section.
    body: { id, call: { kind: entry, taken } },
    key: `call-${id}`,
    opens: true,
  });
}

/** Queues an addition, or where something that was sent has changed, the whole section on the version that is known. */
async function queueSection(draft: CallDraft, section: string, now: JsonObject): Promise<boolean> {
  const { document = openedWith(draft, section), version } = draft.parts[section] ?? {};
  const address = sectionAddress(draft.id, section);
  const shared = { line: draft.id, about: ABOUT };
  const addition = additionOf(document, now);
  if (addition !== null) {
    if (Object.keys(addition).length === 0) return false;
    await queueRequest({ ...shared, method: 'POST', path: `${address}/additions`, body: addition });
    return true;
  }
  if (version === undefined) return false;
  await queueRequest({
    ...shared,
    method: 'PUT',
    path: address,
    body: { document: now, reason: REASON },
    version,
  });
  return true;
}

/** What the opening itself wrote. */
function openedWith({ entry, taken }: CallDraft, section: string): JsonObject {
  return section === 'call' ? (JSON.parse(JSON.stringify({ kind: entry, taken })) as JsonObject) : {};
}

const sectionAddress = (id: string, section: string): string => `/api/incidents/${id}/sections/${section}`;

function sectionOf(item: QueuedItem): string | undefined {
  return item.kind === 'request' ? /\/sections\/([a-z-]+)/.exec(item.path)?.[1] : undefined;
}

async function noteArrival(item: QueuedItem, answer: unknown): Promise<void> {
  if (item.about !== ABOUT || !calls.value.some(({ id }) => id === item.line)) return;
  const section = sectionOf(item);
  const { version, reference } = (answer ?? {}) as { version?: number; reference?: string };
  await changeCall(item.line, (draft) => ({
    ...draft,
    ...(reference !== undefined && { reference }),
    sentAt: new Date().toISOString(),
    ...(section !== undefined && {
      parts: {
        ...draft.parts,
        [section]: {
          document: draft.parts[section]?.document ?? {},
          ...draft.parts[section],
          ...(version !== undefined && { version }),
        },
      },
    }),
  }));
  syncSoon(item.line);
}

/**
 * Somebody wrote the same otherwise meanwhile. Every answer stands in the timeline too, which nobody's words can push
 * out, so that both are kept; whoever finishes the record puts them together.
 */
async function noteOthersWords(item: QueuedItem): Promise<boolean> {
  const section = sectionOf(item);
  if (item.about !== ABOUT || section === undefined) return false;
  if (!calls.value.some(({ id }) => id === item.line)) return false;
  await changeCall(item.line, (draft) => ({
    ...draft,
    parts: {
      ...draft.parts,
      [section]: { document: {}, ...draft.parts[section], both: true },
    },
  }));
  await dropQueued(item.id);
  return true;
}

function isSame(one: JsonObject | undefined, other: JsonObject): boolean {
  return JSON.stringify(one ?? {}) === JSON.stringify(other);
}
