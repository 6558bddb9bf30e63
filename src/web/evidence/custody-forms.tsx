import { useState } from 'preact/hooks';
import type { CustodyItem } from '../../../shared/record/evidence-section.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { nowByService } from '../look/use-now.js';
import { useSession } from '../session/session.js';
import { evidence as say } from '../words/evidence.js';
import { AddedNote } from './added-note.js';
import { useAdd } from './use-add.js';

const THING = { what: '', foundWhere: '', foundBy: '', keptWhere: '', seal: '' };

/** A thing that is kept: only what it is has to be said. */
export function ThingForm({ incident }: { incident: string }) {
  const me = useSession().me?.name ?? '';
  const [words, setWords] = useState({ ...THING, foundBy: me });
  const [looked, setLooked] = useState(false);
  const { state, add } = useAdd(incident);
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (words.what.trim() === '' || !(await add('custody', filledIn(words)))) return;
    setWords({ ...THING, foundBy: me });
    setLooked(false);
  };
  const field = (name: keyof typeof THING, error: string | null = null) => (
    <Field
      label={say.custody[name]}
      value={words[name]}
      onInput={(text) => setWords({ ...words, [name]: text })}
      error={error}
    />
  );
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      {field('what', looked && words.what.trim() === '' ? say.custody.lacksWhat : null)}
      {field('foundWhere')}
      {field('foundBy')}
      {field('keptWhere')}
      {field('seal')}
      <AddedNote state={state} />
      <Button type="submit">{say.custody.save}</Button>
    </form>
  );
}

const PASSED = { from: '', to: '', why: '' };

/** A thing changes hands now; entries are added and never changed. */
export function HandOverForm({ incident, item }: { incident: string; item: CustodyItem }) {
  const from = item.handOvers?.at(-1)?.to ?? item.foundBy ?? '';
  const [words, setWords] = useState({ ...PASSED, from });
  const [looked, setLooked] = useState(false);
  const { state, add } = useAdd(incident);
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (Object.values(words).some((word) => word.trim() === '')) return;
    const at = new Date(nowByService()).toISOString();
    if (!(await add(`custody/${item.id}/hand-overs`, { ...filledIn(words), at }))) return;
    setWords({ ...PASSED, from: words.to });
    setLooked(false);
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      {(['from', 'to', 'why'] as const).map((name) => (
        <Field
          key={name}
          label={say.custody[name]}
          value={words[name]}
          onInput={(text) => setWords({ ...words, [name]: text })}
          error={looked && words[name].trim() === '' ? say.custody.lacks : null}
        />
      ))}
      <AddedNote state={state} />
      <Button type="submit">{say.custody.saveHandOver}</Button>
    </form>
  );
}

/** Without what was left empty. */
export function filledIn(words: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(words).flatMap(([name, word]) => (word.trim() === '' ? [] : [[name, word.trim()]])),
  );
}
