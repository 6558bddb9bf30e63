import { useId, useState } from 'preact/hooks';
import { OUTING_COLUMNS } from '../../../shared/outing/read-outing-rows.js';
import { useTell } from '../ask/use-tell.js';
import { useChoices } from '../call/use-choices.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState, Note } from '../look/notes.js';
import { Select } from '../look/select.js';
import { outAndBack as say } from '../words/out-and-back.js';
import { RowFaults } from './row-faults.js';

interface Imported {
  readonly taken: number;
  readonly ignored: readonly string[];
  readonly day: string;
}

const newKey = (): string => crypto.randomUUID();

/** A list from a spreadsheet, taken over whole or not at all; what is wrong is named by row and column. */
export function ImportForm() {
  const file = useId();
  const { stations } = useChoices();
  const [csv, setCsv] = useState('');
  const [day, setDay] = useState('');
  const [stationId, setStationId] = useState('');
  const [looked, setLooked] = useState(false);
  const [key, setKey] = useState(newKey);
  const [taken, setTaken] = useState<Imported | null>(null);
  const { tell, pending, error } = useTell();
  const take = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    setTaken(null);
    if (csv.trim() === '' || pending) return;
    const body = { csv, ...(day !== '' && { day }), ...(stationId !== '' && { stationId }) };
    const answer = await tell<Imported>('/api/outing-lists', { method: 'POST', body, key }, ['/api/outings']);
    // What was refused is corrected and is another list then.
    setKey(newKey());
    if (answer === undefined) return;
    setTaken(answer);
    setCsv('');
    setLooked(false);
  };
  return (
    <form class="form" onSubmit={(event) => void take(event)} noValidate>
      <p>{say.list.lead}</p>
      <p class="hint">
        {say.list.columns}: {OUTING_COLUMNS.map(({ name }) => name).join(', ')}
      </p>
      {taken !== null && (
        <Note kind="saved">
          <p>{say.list.taken(taken.taken, taken.day)}</p>
          {taken.ignored.length > 0 && <p>{say.list.ignored(taken.ignored.join(', '))}</p>}
        </Note>
      )}
      {error !== null &&
        (error.problem.status === 422 ? <RowFaults error={error} /> : <ErrorState error={error} />)}
      <div class="field">
        <label for={file}>{say.list.file}</label>
        <input
          id={file}
          type="file"
          accept=".csv,text/csv,text/plain"
          onChange={({ currentTarget }) => {
            void currentTarget.files?.[0]?.text().then(setCsv);
          }}
        />
      </div>
      <Field
        label={say.list.text}
        rows={4}
        value={csv}
        onInput={setCsv}
        error={looked && csv.trim() === '' && taken === null ? say.list.missing : null}
      />
      <Field label={say.list.day} hint={say.list.dayHint} type="date" value={day} onInput={setDay} />
      {stations.length > 0 && (
        <Select
          label={say.list.station}
          value={stationId}
          onChoose={setStationId}
          none={say.list.business}
          optional
          groups={[{ options: stations.map(({ id, name }) => ({ value: id, label: name })) }]}
        />
      )}
      <Button type="submit" look="main" busy={pending}>
        {say.list.take}
      </Button>
    </form>
  );
}
