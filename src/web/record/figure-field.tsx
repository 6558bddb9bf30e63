import { useState } from 'preact/hooks';
import type { JsonValue } from '../../../shared/record/json-value.js';
import { Field } from '../look/field.js';
import { textOf } from './read-typed.js';

interface FigureFieldProps {
  readonly label: string;
  readonly figure: JsonValue | undefined;
  /** What a text says: a figure, the text itself where it is none, nothing where it is empty. */
  readonly read: (text: string) => number | string | undefined;
  readonly onFigure: (figure: number | string | undefined) => void;
  readonly hint?: string | undefined;
  readonly error?: string | null;
  readonly unit?: string;
}

/** A figure as it is typed: `1.0` on the way to `1.05` stays as it is. */
export function FigureField({ label, figure, read, onFigure, hint, error, unit }: FigureFieldProps) {
  const [typed, setTyped] = useState(() => textOf(figure));
  return (
    <Field
      label={label}
      hint={hint}
      error={error}
      inputMode="decimal"
      value={read(typed) === figure ? typed : textOf(figure)}
      onInput={(text) => {
        setTyped(text);
        onFigure(read(text));
      }}
      {...(unit !== undefined && { unit })}
    />
  );
}
