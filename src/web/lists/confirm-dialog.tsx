import { Button } from '../look/button.js';
import { Dialog } from '../look/dialog.js';
import { lists as say } from '../words/lists.js';

/** What is asked before something that cannot be undone. */
export interface Confirm {
  readonly title: string;
  readonly text: string;
  readonly yes: string;
}

/** The second question; leaving everything as it is comes first. */
export function ConfirmDialog({
  title,
  text,
  yes,
  onYes,
  onNo,
}: Confirm & { onYes: () => void; onNo: () => void }) {
  return (
    <Dialog title={title} onClose={onNo}>
      <p>{text}</p>
      <div class="buttons">
        <Button onPress={onNo}>{say.cancel}</Button>
        <Button look="main" onPress={onYes}>
          {yes}
        </Button>
      </div>
    </Dialog>
  );
}
