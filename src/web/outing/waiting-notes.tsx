import { dropQueued, requeue, useOutbox } from '../device/outbox.js';
import { Button } from '../look/button.js';
import { Note } from '../look/notes.js';
import { outAndBack as say } from '../words/out-and-back.js';

/** What is only on this device, and what the service did not take, with why and what can be done about it. */
export function WaitingNotes({ line }: { line: string }) {
  const items = useOutbox(line);
  const refused = items.filter(({ state }) => state === 'refused' || state === 'conflict');
  const waiting = items.length - refused.length;
  return (
    <>
      {waiting > 0 && <Note kind="offline">{say.onlyHereCount(waiting)}</Note>}
      {refused.map((item) => (
        <Note kind="error" key={item.id}>
          <p>
            <strong>
              {say.notTaken}: {item.about}
            </strong>
          </p>
          <p>{item.problem?.errors.map(({ detail }) => detail).join(' ')}</p>
          <Button onPress={() => void requeue(item)}>{say.sendAgain}</Button>
          <Button onPress={() => void dropQueued(item.id)}>{say.letGo}</Button>
        </Note>
      ))}
    </>
  );
}
