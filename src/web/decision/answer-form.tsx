import { useState } from 'preact/hooks';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { ErrorState, Loading } from '../look/notes.js';
import { decision as say } from '../words/decision.js';
import { FactControl } from './fact-control.js';
import { NO_DRAFT, readDraft } from './fact-draft.js';
import type { FactPlace } from './fact-place.js';
import type { FactValue } from './fact-value.js';
import { nameValue } from './fact-words.js';
import { type HowKnown, useAnswer, valueOfRecorded } from './use-answer.js';
import type { Matter } from './use-matter.js';

interface AnswerFormProps {
  readonly matter: Matter;
  readonly place: FactPlace;
  readonly label: string;
  readonly mayWrite: boolean;
  readonly onSaved: () => void;
  readonly onTry: (value: FactValue) => void;
}

const WAYS: readonly HowKnown[] = ['told', 'saw', 'read-off'];

/** One answer: tried without saving, or written into the record with how it is known. */
export function AnswerForm({ matter, place, label, mayWrite, onSaved, onTry }: AnswerFormProps) {
  const zone = matter.determined.determination.timeZone;
  const [draft, setDraft] = useState(NO_DRAFT);
  const [known, setKnown] = useState<HowKnown>();
  const [by, setBy] = useState('');
  const [reason, setReason] = useState('');
  const [looked, setLooked] = useState<'no' | 'try' | 'save'>('no');
  const { loaded, stands, save, again, error, telling } = useAnswer(matter.id, place);
  if (error !== null) return <ErrorState error={error} again={again} />;
  if (!loaded) return <Loading />;

  const reading = readDraft(place, draft, zone);
  const changes = stands !== undefined;
  const needsHow = place.plain !== true;
  const whole = (!needsHow || known !== undefined) && (!changes || reason.trim() !== '');
  const submit = (event: Event): void => {
    event.preventDefault();
    setLooked('save');
    if ('fault' in reading || !whole || telling.pending) return;
    setLooked('no');
    void save({ value: reading.value, known: known ?? 'told', by, reason }).then((done) => done && onSaved());
  };
  const tryIt = (): void => {
    setLooked('try');
    if ('value' in reading) onTry(reading.value);
  };
  return (
    <form class="form" onSubmit={submit} noValidate>
      {changes && <p>{say.questions.stands(nameValue(place.kind, valueOfRecorded(stands), zone))}</p>}
      <FactControl
        place={place}
        label={label}
        quietLegend
        facts={matter.determined.facts}
        zone={zone}
        draft={draft}
        onDraft={setDraft}
        error={looked !== 'no' && 'fault' in reading ? reading.fault : null}
      />
      {mayWrite && needsHow && (
        <>
          <Choice
            legend={say.questions.how}
            value={known}
            options={WAYS.map((value) => ({ value, label: say.questions[value as 'told'] }))}
            onChoose={setKnown}
            error={looked === 'save' && known === undefined ? say.questions.howMissing : null}
          />
          <Field label={say.questions.by} hint={say.questions.byHint} value={by} onInput={setBy} />
        </>
      )}
      {mayWrite && changes && (
        <Field
          label={say.questions.reason}
          hint={say.questions.reasonHint}
          value={reason}
          onInput={setReason}
          error={looked === 'save' && reason.trim() === '' ? say.questions.reasonMissing : null}
        />
      )}
      {telling.error !== null && <ErrorState error={telling.error} />}
      <p class="buttons">
        {mayWrite && (
          <Button type="submit" look="main" busy={telling.pending}>
            {say.questions.save}
          </Button>
        )}
        <Button onPress={tryIt}>{say.questions.try}</Button>
      </p>
      {!mayWrite && <p class="quiet">{say.questions.readOnly}</p>}
    </form>
  );
}
