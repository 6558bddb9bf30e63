import { useId } from 'preact/hooks';

interface ChooseFileProps {
  readonly label: string;
  readonly onChoose: (file: File | null) => void;
  readonly error: string | null;
}

/** The browser's own way to choose a file, with its label and its fault. */
export function ChooseFile({ label, onChoose, error }: ChooseFileProps) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {error !== null && (
        <p class="fault" id={`${id}-error`}>
          {error}
        </p>
      )}
      <input
        id={id}
        type="file"
        accept=".zip,application/zip"
        onChange={({ currentTarget }) => onChoose(currentTarget.files?.[0] ?? null)}
        {...(error !== null && { 'aria-invalid': 'true' as const, 'aria-describedby': `${id}-error` })}
      />
    </div>
  );
}
