import { useState } from 'preact/hooks';
import type { AskError } from '../ask/ask-error.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState } from '../look/notes.js';
import { Select } from '../look/select.js';

interface FormField {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly type?: 'text' | 'date';
  readonly rows?: number;
  /** One of these, or none. */
  readonly options?: readonly { readonly value: string; readonly label: string }[];
  readonly none?: string;
}

interface WordsFormProps {
  readonly fields: readonly FormField[];
  readonly button: string;
  /** Given what was filled in; true where it was taken, which empties the form. */
  readonly send: (body: Readonly<Record<string, string>>) => Promise<boolean>;
  readonly pending: boolean;
  readonly error: AskError | null;
}

/** A few fields and one button; faults stand at their fields, and what was typed stays until it was taken. */
export function WordsForm({ fields, button, send, pending, error }: WordsFormProps) {
  const [draft, setDraft] = useState<Readonly<Record<string, string>>>({});
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (pending) return;
    const body = Object.fromEntries(Object.entries(draft).filter(([, text]) => text.trim() !== ''));
    if (await send(body)) setDraft({});
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      {fields.map(({ name, options, none = '', ...field }) => {
        const shared = { ...field, value: draft[name] ?? '', error: error?.faultAt(`/${name}`) };
        const set = (text: string): void => setDraft({ ...draft, [name]: text });
        return options === undefined ? (
          <Field key={name} {...shared} onInput={set} />
        ) : (
          <Select key={name} {...shared} none={none} optional groups={[{ options }]} onChoose={set} />
        );
      })}
      {error !== null && <ErrorState error={error} />}
      <Button type="submit" look="main" busy={pending}>
        {button}
      </Button>
    </form>
  );
}
