import { useEffect, useState } from 'preact/hooks';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { Note, UndoStrip } from '../look/notes.js';
import { Section } from '../look/section.js';
import { useSession } from '../session/session.js';
import { register as say } from '../words/register.js';
import { type RegisterQuery, withPart, writeQuery } from './register-query.js';
import { keepViews, readViews, type View } from './view-store.js';

interface ViewsProps {
  readonly query: RegisterQuery;
  readonly go: (query: RegisterQuery) => void;
}

/** Searches under names, for the person on this device. */
export function SavedViews({ query, go }: ViewsProps) {
  const { me } = useSession();
  const account = me?.accountId ?? null;
  const [views, setViews] = useState<readonly View[] | null>(null);
  const [name, setName] = useState('');
  const [fault, setFault] = useState<string | null>(null);
  const [saved, setSaved] = useState<string | null>(null);
  const [removed, setRemoved] = useState<{ name: string; before: readonly View[] } | null>(null);
  const [notKept, setNotKept] = useState(false);
  useEffect(() => {
    if (account !== null) void readViews(account).then(setViews, () => setNotKept(true));
  }, [account]);
  const change = async (now: readonly View[]): Promise<boolean> => {
    if (account === null) return false;
    try {
      await keepViews(account, now);
      setViews(now);
      return true;
    } catch (error) {
      console.warn('The view could not be kept on this device.', error);
      setNotKept(true);
      return false;
    }
  };
  const save = async (): Promise<void> => {
    const called = name.trim();
    setFault(called === '' ? say.views.nameMissing : null);
    if (called === '' || views === null) return;
    const others = views.filter((view) => view.name !== called);
    if (!(await change([...others, { name: called, query: withPart(query, {}) }]))) return;
    setName('');
    setSaved(called);
    setRemoved(null);
  };
  const remove = async (view: View): Promise<void> => {
    const before = views ?? [];
    if (!(await change(before.filter((one) => one !== view)))) return;
    setRemoved({ name: view.name, before });
    setSaved(null);
  };
  return (
    <div class="unprinted">
      <Section title={say.views.title}>
        <p class="quiet">{say.views.about}</p>
        {notKept && <Note kind="error">{say.views.notKept}</Note>}
        {views?.length === 0 && <p>{say.views.none}</p>}
        {views !== null && views.length > 0 && (
          <ul class="views">
            {views.map((view) => (
              <li key={view.name}>
                <Button
                  pressed={writeQuery(withPart(query, {})) === writeQuery(view.query)}
                  onPress={() => go(view.query)}
                >
                  {view.name}
                </Button>
                <Button look="plain" label={say.views.remove(view.name)} onPress={() => void remove(view)}>
                  {say.views.take}
                </Button>
              </li>
            ))}
          </ul>
        )}
        {removed !== null && (
          <UndoStrip undo={() => void change(removed.before).then(() => setRemoved(null))}>
            {say.views.removed(removed.name)}
          </UndoStrip>
        )}
        {saved !== null && <Note kind="saved">{say.views.saved(saved)}</Note>}
        {!notKept && (
          <form
            class="one-line-form"
            onSubmit={(event) => {
              event.preventDefault();
              void save();
            }}
          >
            <Field label={say.views.name} value={name} onInput={setName} error={fault} autoComplete="off" />
            <Button type="submit">{say.views.save}</Button>
          </form>
        )}
      </Section>
    </div>
  );
}
