import { useId, useState } from 'preact/hooks';
import { queueFile } from '../device/outbox.js';
import { Note } from '../look/notes.js';
import { call as say } from '../words/call.js';
import { openCall } from './sync-call.js';

interface PhotographsProps {
  readonly incident: string;
  /** It is the sheet of paper from which the call is typed in. */
  readonly ofSheet: boolean;
  readonly onKept: () => void;
}

/** Photographs into the evidence of the incident: kept on the phone at once, sent when there is signal. */
export function Photographs({ incident, ofSheet, onKept }: PhotographsProps) {
  const id = useId();
  const [failed, setFailed] = useState(false);
  const take = async (files: readonly File[]): Promise<void> => {
    setFailed(false);
    for (const file of files) {
      try {
        await openCall(incident);
        await queueFile(
          incident,
          file,
          'photograph',
          ofSheet ? { caption: 'The sheet of paper.' } : undefined,
        );
        onKept();
      } catch (error) {
        console.warn('A photograph could not be kept.', error);
        setFailed(true);
      }
    }
  };
  return (
    <div class="photographs">
      <label class="button" for={id}>
        {ofSheet ? say.photographs.sheet : say.photographs.take}
      </label>
      <input
        id={id}
        class="unseen"
        type="file"
        accept="image/*"
        capture="environment"
        multiple
        onChange={({ currentTarget }) => {
          void take([...(currentTarget.files ?? [])]);
        }}
      />
      {failed && <Note kind="error">{say.photographs.notKept}</Note>}
    </div>
  );
}
