import { Button } from '../look/button.js';
import { Fold } from '../look/fold.js';
import { ErrorState } from '../look/notes.js';
import { useSession } from '../session/session.js';
import { followUp as say } from '../words/follow-up.js';
import { DoneForm } from './done-form.js';
import { GiveForm } from './give-form.js';
import { ReachedForm } from './reached-form.js';
import type { TaskItemProps } from './task-props.js';
import { UndoForm } from './undo-form.js';
import { useStep } from './use-step.js';

/** What somebody who works here can do about a task as it stands. Counsel reads it. */
export function TaskActs(props: TaskItemProps) {
  const { task, onDone } = props;
  const { me } = useSession();
  const { take, pending, error } = useStep();
  if (me === null || me.role === 'counsel' || task.state === 'superseded') return null;
  if (task.state === 'done') return <Fold title={say.acts.undo}>{() => <UndoForm {...props} />}</Fold>;
  const mine = task.assignee === me.accountId;
  const about = `${task.reference}: ${task.title}`;
  const have = async (): Promise<void> => {
    const answer = await take(task, { what: 'acknowledgement', about });
    if (answer !== undefined) onDone({ words: answer === 'kept' ? say.kept : say.acts.have });
  };
  return (
    <div class="acts">
      {error !== null && <ErrorState error={error} />}
      <div class="buttons">
        {task.escalates && task.acknowledgedAt === null && (
          <Button look="act" busy={pending} onPress={() => void have()}>
            {say.acts.have}
          </Button>
        )}
        <Button
          busy={pending}
          onPress={() =>
            void take(task, {
              what: 'assignee',
              body: mine ? {} : { accountId: me.accountId },
              on: 'version',
            })
          }
        >
          {mine ? say.acts.giveBack : say.acts.take}
        </Button>
      </div>
      <Fold title={say.acts.done}>{() => <DoneForm {...props} />}</Fold>
      <Fold title={say.acts.reached}>{() => <ReachedForm {...props} />}</Fold>
      {me.role !== 'staff' && <Fold title={say.acts.give}>{() => <GiveForm {...props} />}</Fold>}
    </div>
  );
}
