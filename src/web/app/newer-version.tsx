import { Button } from '../look/button.js';
import { Note } from '../look/notes.js';
import { useNewerVersion } from '../worker/begin-worker.js';
import { common } from '../words/common.js';

/** A newer version waits until the person says so: nobody's page is drawn anew under their hands. */
export function NewerVersion() {
  const use = useNewerVersion();
  if (use === null) return null;
  return (
    <Note>
      <span>{common.newer.text}</span>
      <Button look="plain" onPress={use}>
        {common.newer.use}
      </Button>
    </Note>
  );
}
