import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { handOver as say } from '../words/hand-over.js';
import type { PreviewAnswer } from './hand-over-answers.js';
import { nameChoice } from './name-items.js';
import { choose, giveReason, type PacketDraft } from './packet-draft.js';

interface ChangedListProps {
  readonly preview: PreviewAnswer;
  readonly draft: PacketDraft;
  readonly onChange: (draft: PacketDraft) => void;
  /** A reason changes nothing of what leaves: nothing is asked for anew. */
  readonly onReason: (draft: PacketDraft) => void;
  readonly missing: readonly string[];
}

/** What the sender wants otherwise than the profile has it, each with its reason and the way back. */
export function ChangedList({ preview, draft, onChange, onReason, missing }: ChangedListProps) {
  if (draft.choices.length === 0) return null;
  return (
    <div class="form">
      <h3>{say.changed}</h3>
      <p class="quiet">{say.changedLead}</p>
      {draft.choices.map(({ what, does, reason = '' }) => {
        const name = nameChoice(what, preview);
        return (
          <div class="changed" key={what}>
            <p>
              <strong>{does === 'goes' ? say.letAllGo(name) : say.holdAllBack(name)}</strong>
            </p>
            {does === 'goes' && (
              <Field
                label={say.reason(name)}
                value={reason}
                onInput={(text) => onReason(giveReason(draft, what, text))}
                error={missing.includes(what) ? say.reasonMissing : null}
              />
            )}
            <Button
              look="plain"
              label={say.takeBackOf(name)}
              onPress={() => onChange(choose(draft, what, null))}
            >
              {say.takeBack}
            </Button>
          </div>
        );
      })}
    </div>
  );
}
