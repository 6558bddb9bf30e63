import { useEffect, useRef } from 'preact/hooks';
import { ErrorState, Note, UndoStrip } from '../look/notes.js';
import { followUp as say } from '../words/follow-up.js';
import type { TaskDone } from './task-props.js';
import { useStep } from './use-step.js';

/** What was just done to a task, which may have left the list, and the way back. */
export function DoneStrip({ done, onDone }: { done: TaskDone; onDone: (done: TaskDone) => void }) {
  const strip = useRef<HTMLDivElement>(null);
  const { take, error } = useStep();
  // What had the focus is gone with the task: without this a keyboard would begin again at the top.
  useEffect(() => strip.current?.focus({ preventScroll: true }), [done]);
  const { words, undo } = done;
  const takeBack = async (task: NonNullable<TaskDone['undo']>): Promise<void> => {
    const answer = await take(task, { what: 'undoing', body: { why: say.done.undone }, on: 'version' });
    if (answer !== undefined) onDone({ words: say.done.undoneSaid(task.title) });
  };
  return (
    <div class="done-strip" ref={strip} tabIndex={-1}>
      {error !== null && <ErrorState error={error} />}
      {undo === undefined ? (
        <Note kind="saved">{words}</Note>
      ) : (
        <UndoStrip undo={() => void takeBack(undo)}>{words}</UndoStrip>
      )}
    </div>
  );
}
