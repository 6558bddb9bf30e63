import { useState } from 'preact/hooks';
import { Button } from '../look/button.js';
import { UndoStrip } from '../look/notes.js';
import { tellClock } from '../look/tell-instant.js';
import { call as say } from '../words/call.js';
import { call as inRecord } from '../words/en/call.js';
import { callInRecord } from '../words/en/call-in-record.js';
import { STAMP_NAMES, type StampName } from './call-draft.js';
import type { CallHands } from './use-call.js';

/** The moments that matter, pressed as they happen; what was pressed can be taken back. */
export function Stamps({ hands: { draft, stamp, takeBack } }: { hands: CallHands }) {
  const [latest, setLatest] = useState<StampName | null>(null);
  const at = (name: StampName): string | undefined => draft?.stamps[name]?.at;
  const press = (name: StampName): void => {
    if (at(name) === undefined) stamp(name, `${inRecord.stamps[name]}.`);
    setLatest(name);
  };
  const undo = (name: StampName): void => {
    takeBack(name, callInRecord.takenBack(inRecord.stamps[name]));
    setLatest(null);
  };
  const latestAt = latest === null ? undefined : at(latest);
  return (
    <div class="stamps">
      {latest !== null && latestAt !== undefined && (
        <UndoStrip undo={() => undo(latest)}>
          {say.stamps.pressed(say.stamps[latest], tellClock(latestAt))}
        </UndoStrip>
      )}
      <p class="hint stamps-hint">{say.stamps.hint}</p>
      <div class="stamp-row">
        {STAMP_NAMES.map((name) => {
          const pressed = at(name);
          return (
            <Button key={name} pressed={pressed !== undefined} onPress={() => press(name)}>
              <span class="stamp-name">{say.stamps[name]}</span>
              {pressed !== undefined && <span class="stamp-time">{tellClock(pressed)}</span>}
            </Button>
          );
        })}
      </div>
    </div>
  );
}
