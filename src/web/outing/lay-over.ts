import { orderCraft } from '../../../shared/outing/order-craft.js';
import { standingOf } from '../../../shared/outing/outing.js';
import type { QueuedItem } from '../device/outbox-item.js';
import { OUTING_LINE, unitOfBack } from './outing-queue.js';
import type { CraftWhere } from './service-answers.js';

export type ShownCraft = CraftWhere & {
  /** What was written of it is only on this device. */
  readonly onlyHere: boolean;
};

/**
 * What the service said with what waits on this device laid over it, as it stands at `now` (epoch milliseconds): a list
 * that was kept an hour ago shows who is late now.
 */
export function layOver(
  craft: readonly CraftWhere[],
  waiting: readonly QueuedItem[],
  now: number,
): ShownCraft[] {
  return orderCraft(craft.map((one) => standingNow(withWaiting(one, waiting), now)));
}

function standingNow(craft: ShownCraft, now: number): ShownCraft {
  const { standing, dueBackAt, lastIn } = craft;
  const out = standing === 'in' || standing === 'not-known' ? null : { dueBackAt };
  return { ...craft, standing: standingOf({ out, lastIn }, now) };
}

function withWaiting(craft: CraftWhere, waiting: readonly QueuedItem[]): ShownCraft {
  let shown: ShownCraft = { ...craft, onlyHere: false };
  for (const item of waiting) {
    if (item.state === 'refused' || item.state === 'conflict') continue;
    const back = unitOfBack(item);
    if (back?.unit === craft.unitName) {
      shown = { ...shown, standing: 'in', lastIn: back.at, dueBackAt: null, onlyHere: true };
    }
    const out = outingOf(item);
    if (out?.unit === craft.unitName) {
      shown = { ...shown, standing: 'out', dueBackAt: out.dueBackAt ?? null, onlyHere: true };
    }
  }
  return shown;
}

function outingOf(item: QueuedItem): { unit: string; dueBackAt?: string } | null {
  const isOne = item.kind === 'request' && item.line === OUTING_LINE && item.path === '/api/outings';
  return isOne ? (item.body as { unit: string; dueBackAt?: string }) : null;
}
