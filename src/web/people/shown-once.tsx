import { Button } from '../look/button.js';
import { Note } from '../look/notes.js';
import { tellInstant } from '../look/tell-instant.js';
import { people } from '../words/en/people.js';

const { once: say } = people;

interface ShownOnceProps {
  readonly what: string;
  /** Null where it was shown before: the service keeps no secret that it could show again. */
  readonly secret: string | null;
  readonly until: string | null;
  readonly onSeen: () => void;
}

/** A secret that the service shows once, until the person says that it is handed over. */
export function ShownOnce({ what, secret, until, onSeen }: ShownOnceProps) {
  if (secret === null) return <Note kind="error">{say.gone}</Note>;
  return (
    <Note kind="saved">
      <p>{what}</p>
      <p class="shown-once">{secret}</p>
      {until !== null && <p>{say.until(tellInstant(until))}</p>}
      <p>{say.text}</p>
      <Button onPress={onSeen}>{say.seen}</Button>
    </Note>
  );
}
