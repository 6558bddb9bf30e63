import type { Rung } from '../../../shared/outing/not-back.js';
import type { Stamp } from '../../../shared/call/stamp.js';
import { AskError } from '../ask/ask-error.js';
import { clockOffsetS } from '../device/clock-offset.js';
import { dropQueued, queueRequest } from '../device/outbox.js';
import type { QueuedItem } from '../device/outbox-item.js';
import { notBack as inLog } from '../words/en/not-back.js';
import { notBack as say } from '../words/not-back.js';
import type { Climbed, NotBackReceipt } from './not-back-answers.js';
import { noteReceipt } from './receipts.js';
import { sendOrKeep } from './send-or-keep.js';

export const notBackPath = (id: string): string => `/api/not-back/${id}`;

/**
 * Begins the search for a craft and gives the id of its sheet. Without signal it is kept on this device under an id of
 * its own; where somebody began it before, it is theirs.
 * @throws AskError where the service does not take it
 */
export async function beginNotBack(unit: string): Promise<string> {
  const id = crypto.randomUUID();
  try {
    const answer = await sendOrKeep<NotBackReceipt>({
      line: id,
      about: say.about.opened(unit),
      path: '/api/not-back',
      body: { id, unit },
      key: crypto.randomUUID(),
      opens: true,
    });
    await noteReceipt(answer ?? beganHere(id, unit));
    return id;
  } catch (error) {
    const standing =
      error instanceof AskError ? (error.problem.current as NotBackReceipt | undefined) : undefined;
    if (standing === undefined) throw error;
    await noteReceipt(standing);
    return standing.id;
  }
}

const beganHere = (id: string, unit: string): NotBackReceipt => ({
  id,
  unit,
  openedAt: new Date().toISOString(),
  ended: null,
  incidentId: null,
  climbed: [],
});

/** Stamps a rung at this moment; it is on the disk when this returns. */
export async function stampRung(id: string, rung: Rung, words: string): Promise<void> {
  const phoneOffsetS = clockOffsetS() ?? 0;
  const stamp: Stamp = {
    at: new Date().toISOString(),
    how: 'pressed',
    ...(phoneOffsetS !== 0 && { phoneOffsetS }),
  };
  const said = words.trim();
  await queueRequest({
    line: id,
    about: say.about.stamped(say.ladder.rungs[rung]),
    method: 'POST',
    path: `${notBackPath(id)}/stamps`,
    body: { rung, stamp, ...(said !== '' && { words: said }) },
  });
}

/** A time that was stamped, and whether it is only on this device. */
export type ShownStamp = Climbed & { readonly onlyHere: boolean };

/** Takes a time back: one that still waits is not sent, one that has arrived is undone there. */
export async function undoStamp(id: string, stamp: ShownStamp): Promise<void> {
  if (stamp.onlyHere) return dropQueued(stamp.id);
  await queueRequest({
    line: id,
    about: say.about.undone(say.ladder.rungs[stamp.rung]),
    method: 'POST',
    path: `${notBackPath(id)}/stamps/${stamp.id}/undoing`,
    body: { why: inLog.ladder.undoWhy },
  });
}

/** The times that count: those that the service knows, with what waits on this device laid over them. */
export function climbedWith(known: readonly Climbed[], waiting: readonly QueuedItem[]): ShownStamp[] {
  const undone = new Set<string>();
  const here: ShownStamp[] = [];
  for (const item of waiting) {
    if (item.kind !== 'request') continue;
    const stamp = /\/stamps\/([^/]+)\/undoing$/.exec(item.path)?.[1];
    if (stamp !== undefined) undone.add(stamp);
    if (item.path.endsWith('/stamps')) {
      here.push({ ...(item.body as Omit<Climbed, 'id'>), id: item.id, onlyHere: true });
    }
  }
  return [...known.filter(({ id }) => !undone.has(id)).map((one) => ({ ...one, onlyHere: false })), ...here];
}
