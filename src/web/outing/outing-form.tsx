import { useState } from 'preact/hooks';
import { AskError } from '../ask/ask-error.js';
import { ask } from '../ask/ask.js';
import { askAgain } from '../ask/use-ask.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { ErrorState } from '../look/notes.js';
import { outAndBack as say } from '../words/out-and-back.js';
import { draftOf, type DueIn, NEW_OUTING, type OutingDraft, outingBody } from './outing-draft.js';
import { OutingDetailFields } from './outing-detail-fields.js';
import { OUTING_LINE } from './outing-queue.js';
import { sendOrKeep } from './send-or-keep.js';
import type { Outing } from './service-answers.js';

interface OutingFormProps {
  /** What was written down, where that is changed; otherwise one that goes out. */
  readonly outing?: Outing;
  readonly units: readonly string[];
  /** Told what to say about it. */
  readonly onDone: (words: string) => void;
}

const DUES: readonly DueIn[] = ['30', '60', '120', '240', 'at', 'unknown'];
const dueWords = (due: DueIn): string =>
  due === 'at' ? say.form.dueAt : due === 'unknown' ? say.form.dueUnknown : say.form.dueIn[due];

/** A craft that went out: which one and when it is due are asked, the rest as far as somebody knows it. */
export function OutingForm({ outing, units, onDone }: OutingFormProps) {
  const [draft, setDraft] = useState<OutingDraft>(outing === undefined ? NEW_OUTING : draftOf(outing));
  const [key] = useState(() => crypto.randomUUID());
  const [looked, setLooked] = useState(false);
  const [pending, setPending] = useState(false);
  const [error, setError] = useState<AskError | null>(null);
  const change = (part: Partial<OutingDraft>): void => setDraft({ ...draft, ...part });
  const unit = draft.unit.trim();

  const save = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    const body = outingBody(draft, outing);
    if (unit === '' || body === null || pending) return;
    setPending(true);
    setError(null);
    try {
      await (outing === undefined
        ? sendOrKeep({ line: OUTING_LINE, about: say.outAbout(unit), path: '/api/outings', body, key })
        : ask(`/api/outings/${outing.id}`, { method: 'PUT', version: outing.version, body }));
      await askAgain('/api/outings');
      onDone(say.form.saved(unit));
    } catch (caught) {
      if (!(caught instanceof AskError)) throw caught;
      setError(caught);
      setPending(false);
    }
  };

  const dueIsMissing = looked && outingBody(draft, outing) === null;
  return (
    <form class="form" onSubmit={(event) => void save(event)} noValidate>
      {error !== null && <ErrorState error={error} />}
      <Field
        label={say.form.unit}
        hint={say.form.unitHint}
        value={draft.unit}
        onInput={(words) => change({ unit: words })}
        suggestions={units}
        autoComplete="off"
        readOnly={outing !== undefined}
        error={looked && unit === '' ? say.form.unitMissing : error?.faultAt('/unit')}
      />
      <Choice
        legend={say.form.due}
        options={DUES.map((value) => ({ value, label: dueWords(value) }))}
        value={draft.due}
        onChoose={(due) => change({ due })}
        error={dueIsMissing && draft.due !== 'at' ? say.form.dueMissing : null}
      />
      {draft.due === 'at' && (
        <Field
          label={say.form.dueAtField}
          type="datetime-local"
          value={draft.dueAt}
          onInput={(dueAt) => change({ dueAt })}
          error={dueIsMissing ? say.form.moment : error?.faultAt('/dueBackAt')}
        />
      )}
      <OutingDetailFields draft={draft} change={change} error={error} isOpen={outing !== undefined} />
      <Button type="submit" look="main" busy={pending}>
        {outing === undefined ? say.form.save : say.form.saveChange}
      </Button>
    </form>
  );
}
