import type { JSX } from 'preact';
import { useId } from 'preact/hooks';

interface FieldProps {
  readonly label: string;
  readonly value: string;
  readonly onInput: (value: string) => void;
  readonly hint?: string | undefined;
  /** What is wrong and how to mend it; null where nothing is. */
  readonly error?: string | null | undefined;
  readonly type?:
    'text' | 'password' | 'tel' | 'email' | 'number' | 'date' | 'time' | 'datetime-local' | 'search';
  /** Several lines: how many are shown at first. */
  readonly rows?: number;
  /** Words to choose from while typing. */
  readonly suggestions?: readonly string[];
  readonly required?: boolean;
  readonly autoComplete?: string;
  readonly inputMode?: 'text' | 'decimal' | 'numeric' | 'tel' | 'email' | 'search';
  readonly onBlur?: () => void;
  readonly readOnly?: boolean;
  /** Unit after the figure, such as `ft`. */
  readonly unit?: string;
  readonly step?: string;
  readonly min?: string;
  readonly max?: string;
}

/** One field with its label, its hint and its fault, tied together for a screen reader. */
export function Field({ label, hint, error, rows, suggestions, unit, ...given }: FieldProps) {
  const id = useId();
  const hasError = error !== null && error !== undefined;
  const list = `${id}-list`;
  const described = [hint !== undefined && `${id}-hint`, hasError && `${id}-error`].filter(Boolean).join(' ');
  const about = {
    id,
    ...(described !== '' && { 'aria-describedby': described }),
    ...(hasError && { 'aria-invalid': 'true' as const }),
  };
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {hint !== undefined && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {hasError && (
        <p class="fault" id={`${id}-error`}>
          {error}
        </p>
      )}
      <span class="field-line">
        {rows === undefined ? (
          <input {...inputOf(given)} {...about} {...(suggestions !== undefined && { list })} />
        ) : (
          <textarea {...areaOf(given)} {...about} rows={rows} />
        )}
        {unit !== undefined && <span class="unit">{unit}</span>}
      </span>
      {suggestions !== undefined && (
        <datalist id={list}>
          {suggestions.map((word) => (
            <option key={word} value={word} />
          ))}
        </datalist>
      )}
    </div>
  );
}

type Given = Omit<FieldProps, 'label' | 'hint' | 'error' | 'rows' | 'suggestions' | 'unit'>;

function inputOf({ onInput, type = 'text', ...rest }: Given): JSX.InputHTMLAttributes<HTMLInputElement> {
  return { ...rest, type, onInput: ({ currentTarget }) => onInput(currentTarget.value) };
}

function areaOf({
  onInput,
  value,
  required,
  onBlur,
  readOnly,
}: Given): JSX.TextareaHTMLAttributes<HTMLTextAreaElement> {
  return {
    value,
    onInput: ({ currentTarget }) => onInput(currentTarget.value),
    ...(required !== undefined && { required }),
    ...(onBlur !== undefined && { onBlur }),
    ...(readOnly !== undefined && { readOnly }),
  };
}
