import { useState } from 'preact/hooks';
import { Field } from '../look/field.js';

interface KeptFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onKeep: (value: string) => void;
  readonly hint?: string;
  readonly type?: 'text' | 'tel';
  readonly rows?: number;
}

/** A field whose words are kept when the person leaves it: keeping takes a moment, and typing must not wait for it. */
export function KeptField({ value, onKeep, ...field }: KeptFieldProps) {
  const [typed, setTyped] = useState(value);
  return (
    <Field
      {...field}
      value={typed}
      onInput={setTyped}
      onBlur={() => {
        if (typed !== value) onKeep(typed);
      }}
      autoComplete="off"
    />
  );
}
