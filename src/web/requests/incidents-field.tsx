import { useState } from 'preact/hooks';
import { useAsk } from '../ask/use-ask.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { aboutOf, whatOf } from '../register/tell-line.js';
import type { RegisterLine } from '../register/register-answers.js';
import { requests as say } from '../words/requests.js';
import type { ChosenIncident } from './request-draft.js';

interface IncidentsFieldProps {
  readonly chosen: readonly ChosenIncident[];
  readonly onChange: (chosen: readonly ChosenIncident[]) => void;
  /** What a hold is at first: the kind of the paper says. */
  readonly holds: boolean;
  readonly faultAt: (place: number, member: 'reason') => string | null;
}

/** The incidents that a request concerns: found by words, each with whether everything of it is kept. */
export function IncidentsField({ chosen, onChange, holds, faultAt }: IncidentsFieldProps) {
  const { form } = say;
  const change = (id: string, part: Partial<ChosenIncident>): void =>
    onChange(chosen.map((one) => (one.id === id ? { ...one, ...part } : one)));
  return (
    <>
      {chosen.length === 0 && <p>{form.noneChosen}</p>}
      {chosen.map(({ id, reference, hold, reason }, place) => (
        <div class="spec-item" role="group" aria-label={reference} key={id}>
          <Choice
            legend={form.hold(reference)}
            hint={form.holdHint}
            options={(['yes', 'no'] as const).map((value) => ({ value, label: form.holds[value] }))}
            value={hold}
            onChoose={(value) => change(id, { hold: value })}
          />
          {hold === 'no' && holds && (
            <Field
              label={`${form.notHeld} *`}
              value={reason}
              onInput={(text) => change(id, { reason: text })}
              error={faultAt(place, 'reason')}
            />
          )}
          <Button onPress={() => onChange(chosen.filter((one) => one.id !== id))}>
            {form.remove(reference)}
          </Button>
        </div>
      ))}
      <FindIncident
        without={new Set(chosen.map(({ id }) => id))}
        onChoose={(id, reference) =>
          onChange([...chosen, { id, reference, hold: holds ? 'yes' : 'no', reason: '' }])
        }
      />
    </>
  );
}

interface FindIncidentProps {
  readonly without: ReadonlySet<string>;
  readonly onChoose: (id: string, reference: string) => void;
}

/** Finds an incident by its reference or its words. */
export function FindIncident({ without, onChoose }: FindIncidentProps) {
  const { form } = say;
  const [words, setWords] = useState('');
  const query =
    words.trim().length < 2 ? null : `/api/register?limit=5&q=${encodeURIComponent(words.trim())}`;
  const { data } = useAsk<{ items: readonly RegisterLine[] }>(query);
  const found = data?.items.filter(({ id }) => !without.has(id));
  return (
    <>
      <Field label={form.find} hint={form.findHint} type="search" value={words} onInput={setWords} />
      <div aria-live="polite">
        {found?.length === 0 && <p>{form.nothingFound}</p>}
        {found !== undefined && found.length > 0 && (
          <ul class="request-found" aria-label={form.found}>
            {found.map((line) => (
              <li key={line.id}>
                <Button
                  onPress={() => {
                    setWords('');
                    onChoose(line.id, line.reference);
                  }}
                >
                  {line.reference}, {[whatOf(line), aboutOf(line)].filter((part) => part !== '').join(' · ')}
                </Button>
              </li>
            ))}
          </ul>
        )}
      </div>
    </>
  );
}
