import { useId } from 'preact/hooks';

interface ChooseFileProps {
  readonly label: string;
  readonly onChoose: (file: File | null) => void;
  readonly error: string | null;
  /** Endings and types that the browser offers. */
  readonly accept: string;
  readonly hint?: string;
}

/** The browser's own way to choose a file, with its label and its fault. */
export function ChooseFile({ label, onChoose, error, accept, hint }: ChooseFileProps) {
  const id = useId();
  const described = [hint !== undefined && `${id}-hint`, error !== null && `${id}-error`]
    .filter(Boolean)
    .join(' ');
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {hint !== undefined && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {error !== null && (
        <p class="fault" id={`${id}-error`}>
          {error}
        </p>
      )}
      <input
        id={id}
        type="file"
        accept={accept}
        onChange={({ currentTarget }) => onChoose(currentTarget.files?.[0] ?? null)}
        {...(described !== '' && { 'aria-describedby': described })}
        {...(error !== null && { 'aria-invalid': 'true' as const })}
      />
    </div>
  );
}
