import { useStore } from '../app/store.js';
import { useOutbox } from '../device/outbox.js';
import { UndoStrip } from '../look/notes.js';
import { tellClock } from '../look/tell-instant.js';
import { outAndBack as say } from '../words/out-and-back.js';
import { marked, OUTING_LINE, undoBack } from './outing-queue.js';

/** The latest craft that was marked back here, in thumb's reach, with the way back. */
export function MarkedStrip() {
  const latest = useStore(marked);
  const waiting = useOutbox(OUTING_LINE);
  if (latest === null) return null;
  const item = waiting.find(({ id }) => id === latest.itemId);
  if (item?.state === 'refused' || item?.state === 'conflict') return null;
  return (
    <UndoStrip undo={() => void undoBack(latest)}>
      {say.backAt(latest.unit, tellClock(latest.at))}
      {item !== undefined && ` · ${say.onlyHere}`}
    </UndoStrip>
  );
}
