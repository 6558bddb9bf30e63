import { Button } from '../look/button.js';
import { Note } from '../look/notes.js';
import { decision as say } from '../words/decision.js';
import { ChangeList } from './change-list.js';
import { compareDeterminations, type Determined } from './compare-determinations.js';

/** It was determined again while somebody was about to sign: what changed, and the way on. */
export function StaleNote({ read, now, onGo }: { read: Determined; now: Determined; onGo: () => void }) {
  const changed = compareDeterminations(read, now);
  return (
    <Note kind="error">
      <p>
        <strong>{say.sign.stale}</strong>
      </p>
      {changed.length === 0 ? <p>{say.sign.staleSame}</p> : <ChangeList changed={changed} />}
      <Button onPress={onGo}>{say.sign.staleGo}</Button>
    </Note>
  );
}
