import { useState } from 'preact/hooks';
import { OUTSIDE_KINDS, type OutsideKind } from '../../../shared/record/evidence-section.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { momentOf } from '../look/moment.js';
import { Select } from '../look/select.js';
import { ownZone } from '../look/tell-instant.js';
import { evidence as say } from '../words/evidence.js';
import { AddedNote } from './added-note.js';
import { filledIn } from './custody-forms.js';
import { useAdd } from './use-add.js';

const EMPTY = { what: '', holder: '', howToReach: '' };

interface OutsideFormProps {
  readonly incident: string;
  readonly timeZone: string | undefined;
}

/** Somebody else holds evidence: what kind has to be said, and until when it is kept if that is known. */
export function OutsideForm({ incident, timeZone = ownZone() }: OutsideFormProps) {
  const [kind, setKind] = useState<OutsideKind | ''>('');
  const [words, setWords] = useState(EMPTY);
  const [until, setUntil] = useState('');
  const [looked, setLooked] = useState(false);
  const { state, add } = useAdd(incident);
  const overwrittenAt = until === '' ? undefined : momentOf(until, timeZone);
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (kind === '' || overwrittenAt === null) return;
    const body = {
      kind,
      state: 'not-asked',
      ...filledIn(words),
      ...(overwrittenAt !== undefined && { overwrittenAt }),
    };
    if (!(await add('outside-evidence', body))) return;
    setKind('');
    setWords(EMPTY);
    setUntil('');
    setLooked(false);
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <Select
        label={say.outside.kind}
        value={kind}
        onChoose={setKind}
        none="—"
        groups={[{ options: OUTSIDE_KINDS.map((value) => ({ value, label: say.outside.kinds[value] })) }]}
        error={looked && kind === '' ? say.outside.lacksKind : null}
      />
      {(['what', 'holder', 'howToReach'] as const).map((name) => (
        <Field
          key={name}
          label={say.outside[name]}
          value={words[name]}
          onInput={(text) => setWords({ ...words, [name]: text })}
        />
      ))}
      <Field
        label={say.outside.overwrittenAt}
        hint={say.outside.overwrittenHint}
        type="datetime-local"
        value={until}
        onInput={setUntil}
        error={looked && overwrittenAt === null ? say.outside.notATime : null}
      />
      <AddedNote state={state} />
      <Button type="submit">{say.outside.save}</Button>
    </form>
  );
}
